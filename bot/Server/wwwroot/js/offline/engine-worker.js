// The core of the conversation in a thread of its own, so that the page never waits for it. One job after the other.
/** @type {Kept.Engine} */
let engine;
let line = Promise.resolve();

/** @type {Record<string, (given: any) => any>} */
const jobs = {
  async start({ root }) {
    const { dotnet } = await import(`${root}dotnet.js`);
    const runtime = await dotnet.create();
    const exports = await runtime.getAssemblyExports(runtime.getConfig().mainAssemblyName);
    engine = exports.DxAssistant.Browser.Engine;
  },
  load: ({ pack }) => engine.Load(new Uint8Array(pack)),
  warm: () => engine.Warm(),
  begin: ({ log }) => engine.Begin(log),
  take: ({ turn }) => engine.Take(turn),
};

/** @param {{ id: number, job: string, given: any }} asked */
async function run({ id, job, given }) {
  try {
    postMessage({ id, result: await jobs[job](given) });
  } catch (problem) {
    postMessage({ id, problem: problem instanceof Error ? problem.message : String(problem) });
  }
}

addEventListener('message', ({ data }) => { line = line.then(() => run(data)); });
