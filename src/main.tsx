import '@fontsource-variable/source-sans-3';
import './ui/styles/base.css';
import './ui/styles/frame.css';
import './ui/styles/controls.css';
import './ui/styles/stages.css';
import './ui/styles/print.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { useStudio, wake } from './state/studio.ts';
import { App } from './ui/App.tsx';
import { Guard } from './ui/Guard.tsx';
import { fetchForm } from './ui/stages/forms.ts';

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element to put the studio in');

/** Not awaited by the module itself: the stages and styles fetched here wait for it to be there. */
const start = async (): Promise<void> => {
  await wake();
  await fetchForm(useStudio.getState().stage);
  createRoot(root).render(
    <StrictMode>
      <Guard of="studio" say="Capwright has failed. Your caps are kept as they were a moment ago:">
        <App />
      </Guard>
    </StrictMode>,
  );
};

void start();
