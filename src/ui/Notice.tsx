import { dismissNotice } from '../state/actions.ts';
import { useStudio } from '../state/studio.ts';

/** A calm word about something outside the user's own work. */
export const Notice = () => {
  const notice = useStudio((s) => s.notice);
  return notice === null ? null : (
    <p className="notice" role="status">
      {notice}{' '}
      <button type="button" onClick={dismissNotice}>
        I see
      </button>
    </p>
  );
};
