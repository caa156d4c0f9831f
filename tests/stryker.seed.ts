/** The same few generated cases for each mutant: a law that fails by chance must not count as a mutant killed. */
import fc from 'fast-check';

fc.configureGlobal({ seed: 1867, numRuns: 50 });
