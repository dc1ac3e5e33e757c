import { activation } from './activation.ts';
import { findings } from './findings.ts';
import { runTests } from './harness.ts';
import { languageFeatures } from './language-features.ts';
import { preview } from './preview.ts';

/** What the extension host calls. */
export const run = (): Promise<void> => runTests([activation, findings, languageFeatures, preview]);
