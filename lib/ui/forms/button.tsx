// Buttons are ruled boxes; the one main action of a page is filled with ink.
import type { ComponentProps, ReactNode } from 'react';

export type ButtonKind = 'main' | 'plain' | 'warning' | 'quiet';

type Plain = Omit<ComponentProps<'button'>, 'className' | 'style'>;

/** A button; submits unless `type` says otherwise. `warning` for what cannot be undone, `quiet` for a small one. */
export function Button({
  kind = 'plain',
  type = 'submit',
  ...rest
}: Plain & { readonly kind?: ButtonKind | undefined }) {
  return <button type={type} {...rest} className="button" data-kind={kind} />;
}

interface LinkButtonProps {
  readonly href: string;
  readonly kind?: ButtonKind | undefined;
  readonly children: ReactNode;
}

/** A link that leads on to an action, drawn as a button. */
export function LinkButton({ href, kind = 'plain', children }: LinkButtonProps) {
  return (
    <a href={href} className="button" data-kind={kind}>
      {children}
    </a>
  );
}

/** Buttons side by side, the main one first. */
export function Actions({ children }: { readonly children: ReactNode }) {
  return <div className="actions">{children}</div>;
}
