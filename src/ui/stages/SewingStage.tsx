import type { SeamReport } from '../../pattern/seam-check.ts';
import { derived } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { mm, ratio, type Words, words } from '../../words.ts';
import { Said } from '../Said.tsx';

const none: readonly SeamReport[] = [];

/** The seams in the order in which they are sewn. */
export const SewingStage = () => {
  const draft = useStudio((s) => derived(s.good).draft);
  const allowances = draft?.pattern.allowances;
  return (
    <>
      <p className="lead">The seams in sewing order. Match the notches first, then sew between them.</p>
      <ol className="seams">
        {(draft?.seams ?? none).map((report) => (
          <li key={report.seam.id}>
            <h3>{report.seam.name}</h3>
            <p>
              <Said words={lengthWords(report)} />
            </p>
            <p className="help">
              <Said words={practice(report, allowances?.[report.seam.kind] ?? 0)} />
            </p>
          </li>
        ))}
      </ol>
      <Cautions />
    </>
  );
};

const lengthWords = ({ a, b, seam }: SeamReport): Words =>
  seam.ease === 0 ? words`${mm(a)} long.` : words`${mm(b)} eased into ${mm(a)}: ${ratio(seam.ease)} longer.`;

const practice = ({ notches }: SeamReport, allowance: number): Words => {
  const meeting = notches.matched === 0 ? '' : ' Notches on both sides meet.';
  return allowance > 0 ? words`${mm(allowance)} allowance.${meeting}` : words`No allowance.${meeting}`;
};

/** The usual cautions, where the work is. */
const Cautions = () => (
  <section className="cautions">
    <h3>Take care</h3>
    <ul>
      <li>Stitch beside a visor stiffener, never through it: needles break and fly. Protect your eyes.</li>
      <li>
        An iron melts a plastic stiffener and steam scalds. Test the heat on a scrap, and take pins out first.
      </li>
      <li>
        Cut away from the hand with a rotary cutter or a craft knife, and close the blade when you put it
        down.
      </li>
      <li>
        On a child’s cap: no cords, a strap only if it comes apart when pulled, no buttons under three years,
        and sewn through after that. Loose parts can choke and cords can strangle. Local rules and qualified
        advice come first.
      </li>
    </ul>
  </section>
);
