// Lets a command use what the tests use: it cleans up after itself as a test does.

/** Runs `work` with something like a test's context, and then what it has put off, last first. */
export async function aside(work) {
  const putOff = [];
  try {
    return await work({ after: (tidy) => putOff.unshift(tidy) });
  } finally {
    for (const tidy of putOff) await tidy();
  }
}
