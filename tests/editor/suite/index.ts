import { activation } from './activation.ts';
import { betweenLines } from './between-lines.ts';
import { findings } from './findings.ts';
import { folder } from './folder.ts';
import { runTests } from './harness.ts';
import { languageFeatures } from './language-features.ts';
import { preview } from './preview.ts';
import { questions } from './questions.ts';

/** What the extension host calls. */
export const run = (): Promise<void> =>
  runTests([activation, findings, languageFeatures, folder, preview, questions, betweenLines]);
