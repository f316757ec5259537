import { lazy, Suspense, useEffect } from 'react';
import { stageNames } from '../state/stage.ts';
import { useStudio } from '../state/studio.ts';
import { DetailPanel } from './details/DetailPanel.tsx';
import { Header } from './Header.tsx';
import { Notice } from './Notice.tsx';
import { keepSheets } from './paper/sheets-now.ts';
import { forms } from './stages/forms.ts';
import { TableView } from './TableView.tsx';
import { Tally } from './Tally.tsx';
import { Tape } from './Tape.tsx';
import { useTheme } from './use-theme.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const SheetMapView = lazy(() =>
  import('./paper/SheetMapView.tsx').then((m) => ({ default: m.SheetMapView })),
);

/** One screen: the tape of stages, the stage's ticket, the table and its tally. */
export const App = () => {
  const stage = useStudio((s) => s.stage);
  const Form = forms[stage];
  useTheme();
  useUndoKeys();
  useEffect(keepSheets, []);
  return (
    <div className="studio">
      <Header />
      <Tape />
      <main>
        <section
          className="ticket"
          key={stage}
          id="ticket"
          role="tabpanel"
          aria-labelledby={`stage-${stage}`}
        >
          <Notice />
          <h2 className="unseen">{stageNames[stage]}</h2>
          <Suspense>
            <Form />
          </Suspense>
        </section>
        <div className="board">
          <TableView />
          <Suspense>{stage === 'paper' && <SheetMapView />}</Suspense>
        </div>
        <DetailPanel />
      </main>
      <Tally />
    </div>
  );
};
