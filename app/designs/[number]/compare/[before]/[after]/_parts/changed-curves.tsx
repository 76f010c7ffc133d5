// The curves that changed, both revisions on one plot each, and the shares of the output's error beside one another.
import { addresses } from '@/app/_parts/addresses';
import type { CompareView } from '@/lib/service/views/compare';
import { CurveOverlay, OverlayNumbers, type SidesNamed } from '@/lib/ui/plot/curve-overlay';
import { isOfShaft } from '@/lib/ui/plot/curve-plots';
import { ShareBars } from '@/lib/ui/plot/share-bars';
import { PartFold } from '@/lib/ui/sheet/part-fold';
import { sideName } from './side-name';

interface ChangedCurvesProps {
  readonly view: CompareView;
  readonly inFull: string | undefined;
}

type Pair = CompareView['curves'][number];

/** Name of the fold that holds the diagrams along shafts. */
const ofShafts = 'curves-along-shafts';

export function ChangedCurves({ view, inFull }: ChangedCurvesProps) {
  const names = namesOf(view);
  const shafts = view.curves.filter(alongShaft);
  const others = view.curves.filter((pair) => !alongShaft(pair));
  return (
    <>
      {others.length === 0 ? null : (
        <>
          <p className="hush">
            Thin and dashed: {names.names[0]}. In full: {names.names[1]}. Number and letter stand on each
            line; what did not change is drawn once.
          </p>
          <Overlays view={view} pairs={others} inFull={inFull} />
        </>
      )}
      <ShareBars
        caption="Shares of the error at the output"
        shares={view.shares}
        names={[capital(names.names[0]), capital(names.names[1])]}
        hrefOf={(figure) => `${sheetOf(view)}#figure-${figure.key}`}
      />
      {shafts.length === 0 ? null : (
        <PartFold
          id={ofShafts}
          summary={shafts.length === 1 ? '1 shaft drawn' : `${shafts.length} shafts drawn`}
          what={shafts.map((pair) => curveOf(pair)?.label).join('; ')}
          inFull={inFull}
        >
          <Overlays view={view} pairs={shafts} inFull={undefined} />
        </PartFold>
      )}
    </>
  );
}

/** What a fold of the comparison holds; null when it has no such fold. */
export function compareFold(fold: string, view: CompareView) {
  if (fold === ofShafts)
    return <Overlays view={view} pairs={view.curves.filter(alongShaft)} inFull={undefined} />;
  const pair = view.curves.find((p) => fold === `numbers-${curveOf(p)?.key}`);
  return pair === undefined ? null : <OverlayNumbers pair={pair} names={namesOf(view).names} />;
}

interface OverlaysProps extends ChangedCurvesProps {
  readonly pairs: readonly Pair[];
}

function Overlays({ view, pairs, inFull }: OverlaysProps) {
  const names = namesOf(view);
  // A draft has no worked sheet: without script its curves are looked up on the revision it is compared with.
  const letter = view.after.letter === 'draft' ? view.before.letter : view.after.letter;
  const workedHref = addresses.worked(view.design.number, letter);
  return (
    <div className="plots-small">
      {pairs.map((pair) => (
        <CurveOverlay
          key={curveOf(pair)?.key}
          pair={pair}
          {...names}
          workedHref={workedHref}
          inFull={inFull}
        />
      ))}
    </div>
  );
}

function sheetOf({ design, before, after }: CompareView): string {
  return addresses.revision(design.number, after.letter === 'draft' ? before.letter : after.letter);
}

function namesOf({ before, after }: CompareView): SidesNamed {
  return {
    names: [sideName(before), sideName(after)],
    short: [before.letter, after.letter],
  };
}

function curveOf({ before, after }: Pair) {
  return after ?? before;
}

function alongShaft(pair: Pair): boolean {
  const curve = curveOf(pair);
  return curve !== null && isOfShaft(curve);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
