import { useEffect, useState } from 'react';
import { stageNames } from '../state/stage.ts';
import { useStudio } from '../state/studio.ts';
import { DetailPanel } from './details/DetailPanel.tsx';
import { Fetched, part } from './Fetched.tsx';
import { Guard } from './Guard.tsx';
import { Header } from './Header.tsx';
import { Notice } from './Notice.tsx';
import { keepSheets } from './paper/sheets-now.ts';
import { WornPlace } from './preview/WornPlace.tsx';
import { CapStage } from './stages/CapStage.tsx';
import { laterForms } from './stages/forms.ts';
import { TableView } from './TableView.tsx';
import { Tally } from './Tally.tsx';
import { Tape } from './Tape.tsx';
import { useTheme } from './use-theme.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const lay = part(() => import('./cloth/LayView.tsx').then((m) => m.LayView));
const sheetMap = part(() => import('./paper/SheetMapView.tsx').then((m) => m.SheetMapView));

/** One screen: the tape of stages, the stage's ticket, the table and its tally. */
export const App = () => {
  const stage = useStudio((s) => s.stage);
  const worn = useStudio((s) => s.worn.place);
  useTheme();
  useUndoKeys();
  // What comes after the first picture does not hold it up.
  const [ready, setReady] = useState(false);
  useEffect(() => (ready ? keepSheets() : undefined), [ready]);
  return (
    <div className="studio">
      <Header />
      <Tape />
      <Notice />
      <main>
        <Guard of={stage} say="Something here has failed. Your caps are kept: go to another stage, or">
          <section
            className="ticket"
            key={stage}
            id="ticket"
            role="tabpanel"
            // Only a stage to be read needs a stop of its own, from which the keys can scroll it.
            tabIndex={stage === 'sewing' ? 0 : undefined}
            aria-labelledby={`stage-${stage}`}
          >
            <h2 className="unseen" tabIndex={-1}>
              {stageNames[stage]}
            </h2>
            {stage === 'cap' ? <CapStage /> : <Fetched part={laterForms[stage]} with={{}} />}
          </section>
          <div className="board" data-worn={worn}>
            <div className="on-board">
              <TableView onReady={() => setReady(true)} />
              {stage === 'cloth' && <Fetched part={lay} with={{}} />}
              {stage === 'paper' && <Fetched part={sheetMap} with={{}} />}
            </div>
            <WornPlace />
          </div>
          <DetailPanel />
        </Guard>
      </main>
      <Tally />
      <p className="on-paper">Patterns are printed from the PDF on the Paper stage.</p>
    </div>
  );
};
