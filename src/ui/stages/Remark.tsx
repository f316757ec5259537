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

/** A plain word on a measurement. It stands back where a problem says that it cannot be, or that it cannot be read. */
export const Remark = ({
  field,
  judgement: { kind, message, likely },
}: {
  readonly field: FieldId;
  readonly judgement: Judgement;
}) => {
  const stopped = useProblems(field).length > 0;
  const unread = useUnread(field, lengthNotation) !== null;
  const unit = useStudio((s) => s.wish.unit);
  if (message.length === 0 || unread || (kind === 'error' && stopped)) return null;
  return (
    <p className={kind === 'fine' ? 'help' : kind === 'warning' ? 'remark' : 'problem'} aria-live="polite">
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
