import { useEffect } from 'react';
import { stageNames } from '../state/stage.ts';
import { useStudio } from '../state/studio.ts';
import { DetailPanel } from './details/DetailPanel.tsx';
import { Header } from './Header.tsx';
import { Notice } from './Notice.tsx';
import { SheetMapView } from './paper/SheetMapView.tsx';
import { keepSheets } from './paper/sheets-now.ts';
import { CapStage } from './stages/CapStage.tsx';
import { ClothStage } from './stages/ClothStage.tsx';
import { HeadStage } from './stages/HeadStage.tsx';
import { PaperStage } from './stages/PaperStage.tsx';
import { SewingStage } from './stages/SewingStage.tsx';
import { TableView } from './TableView.tsx';
import { Tally } from './Tally.tsx';
import { Tape } from './Tape.tsx';
import { useTheme } from './use-theme.ts';
import { useUndoKeys } from './use-undo-keys.ts';

const forms = {
  head: HeadStage,
  cap: CapStage,
  cloth: ClothStage,
  paper: PaperStage,
  sewing: SewingStage,
} as const;

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
          <Form />
        </section>
        <div className="board">
          <TableView />
          {stage === 'paper' && <SheetMapView />}
        </div>
        <DetailPanel />
      </main>
      <Tally />
    </div>
  );
};
