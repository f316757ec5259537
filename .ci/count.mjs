// Adds up what the two runners wrote down, and says so on the last line. Exits non-zero unless all went well.
import { readFileSync } from 'node:fs';

const npmFailed = process.argv[2] !== '0';

const report = (name) => {
  try {
    return JSON.parse(readFileSync(`test-results/${name}.json`, 'utf8'));
  } catch {
    return undefined;
  }
};

const unitCount = (unit) => {
  // A file that could not even be loaded holds no tests, and is still a failure.
  const unread = unit.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  return {
    passed: unit.numPassedTests,
    failed: unit.numFailedTests + unread.length,
    skipped: unit.numPendingTests + unit.numTodoTests,
  };
};

const browserCount = ({ stats, errors }) => ({
  passed: stats.expected,
  failed: stats.unexpected + stats.flaky + errors.length,
  skipped: stats.skipped,
});

const none = { passed: 0, failed: 0, skipped: 0 };
const unit = report('unit');
const browser = report('browser');
const counts = { unit: unit ? unitCount(unit) : none, browser: browser ? browserCount(browser) : none };
for (const [runner, { passed, failed, skipped }] of Object.entries(counts)) {
  const ran = passed + failed > 0;
  console.log(ran ? `${runner} tests: ${passed} of ${passed + failed} passed, ${skipped} skipped` : `no ${runner} test ran`);
}

const sum = (key) => counts.unit[key] + counts.browser[key];
const unrun = Object.values(counts).filter(({ passed, failed }) => passed + failed === 0).length;
// Types, lint and build have no count of their own: when one of them stops the run, that is one failure.
const stopped = npmFailed && sum('failed') === 0 ? 1 : 0;
if (stopped) console.log('npm test stopped before or beside the tests: see above');
const failed = sum('failed') + (stopped || (npmFailed ? 0 : unrun));
console.log(`${sum('passed')} passed, ${failed} failed${sum('skipped') > 0 ? `, ${sum('skipped')} skipped` : ''}`);
process.exit(failed > 0 || npmFailed ? 1 : 0);
