import { dismissNotice } from '../state/actions.ts';
import { keepHere, useStudio } from '../state/studio.ts';
import { Going } from './Going.tsx';

/** Calm words about something outside the user's own work. Where they come to stand is there before them, so that they are read out. */
export const Notice = () => {
  const notice = useStudio((s) => s.notice);
  const elsewhere = useStudio((s) => s.elsewhere);
  return (
    <div className="notices" role="status">
      {elsewhere && (
        <p className="notice">
          Capwright is open in another tab too. That one has kept something since: what you change here is not
          kept until you choose.{' '}
          <button type="button" onClick={() => location.reload()}>
            Take what the other tab kept
          </button>{' '}
          <Going onPress={keepHere}>Keep this one</Going>
        </p>
      )}
      {notice !== null && (
        <p className="notice">
          {notice} <Going onPress={dismissNotice}>I see</Going>
        </p>
      )}
    </div>
  );
};
