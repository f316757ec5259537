// Runs the named scripts of package.json beside each other. The last one speaks as it goes; what another says comes out
// as one piece once it has ended. Exits non-zero unless all went well.
import { spawn } from 'node:child_process';

const names = process.argv.slice(2);

const run = (name) =>
  new Promise((done) => {
    const aloud = name === names.at(-1);
    const script = spawn('npm', ['run', name], { stdio: ['ignore', aloud ? 'inherit' : 'pipe', aloud ? 'inherit' : 'pipe'] });
    const said = [];
    for (const stream of [script.stdout, script.stderr]) stream?.on('data', (part) => said.push(part));
    script.on('error', ({ message }) => said.push(Buffer.from(`${message}\n`)));
    // A script that was killed, or never began, has no code of its own.
    script.on('close', (code) => {
      process.stdout.write(Buffer.concat(said));
      done({ name, ok: code === 0 });
    });
  });

const failed = (await Promise.all(names.map(run))).filter(({ ok }) => !ok).map(({ name }) => name);
if (failed.length > 0) console.log(`failed: ${failed.join(', ')}`);
process.exitCode = failed.length > 0 ? 1 : 0;
