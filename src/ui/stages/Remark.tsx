import type { Judgement } from '../../head/judgement.ts';
import { put } from '../../state/actions.ts';
import type { FieldId } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { useProblems } from '../../state/use-problems.ts';
import { formatLength } from '../../units.ts';
import { lengthNotation } from '../controls/notation.ts';
import { useUnread } from '../controls/use-unread.ts';
import { focusField } from '../focus.ts';
import { Figures, Said } from '../Said.tsx';

interface Props {
  readonly field: FieldId;
  /** Null while there is nothing to judge. */
  readonly judgement: Judgement | null;
}

/** A plain word on a measurement. It stands back where a problem says that it cannot be, or that it cannot be read. */
export const Remark = ({ field, judgement }: Props) => {
  const stopped = useProblems(field).length > 0;
  const unread = useUnread(field, lengthNotation) !== null;
  const says = judgement !== null && judgement.message.length > 0 && !unread;
  // Its place is there before it, so that it is read out.
  return (
    <div className="problems" aria-live="polite">
      {says && !(judgement.kind === 'error' && stopped) && <Word field={field} judgement={judgement} />}
    </div>
  );
};

const Word = ({
  field,
  judgement: { kind, message, likely },
}: {
  readonly field: FieldId;
  readonly judgement: Judgement;
}) => {
  const unit = useStudio((s) => s.wish.unit);
  return (
    <p className={kind === 'fine' ? 'help' : kind === 'warning' ? 'remark' : 'problem'}>
      <Said words={message} />{' '}
      {likely !== undefined && (
        <button
          type="button"
          onClick={() => {
            put(field, likely);
            focusField(field);
          }}
        >
          Use <Figures text={formatLength(likely, unit)} />
        </button>
      )}
    </p>
  );
};
