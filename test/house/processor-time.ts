/**
 * Time that this process has had of the processor, ms: a clock for benchmarks that other work on the machine hardly
 * touches. On a quiet machine it runs a little faster than the wall's, since collecting garbage counts too.
 */
export const processorTime = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Long enough that the compiler has done its part before anything is counted, ms. */
export const timing = { now: processorTime, warmupTime: 500, time: 1000 } as const;
