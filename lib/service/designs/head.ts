// The head that stands on every page about a design.

import type { DesignContext } from '../use-case';
import type { DesignHead } from '../views/heads';

export function designHead({ design, role }: DesignContext): DesignHead {
  return {
    number: design.number,
    title: design.title,
    club: { code: design.clubCode, name: design.clubName },
    author: { userId: design.authorId, name: design.authorName },
    role,
  };
}
