import { TextDocument } from 'vscode-languageserver-textdocument';
import { getLanguageService } from 'yaml-language-server';
import { recordSchema } from '../schema.ts';
import { type Contender, letterChange } from './contender.ts';

const service = getLanguageService({
  schemaRequestService: () => Promise.reject(new Error('no schema is fetched')),
  workspaceContext: { resolveRelativePath: (path) => path },
});
service.configure({
  validate: true,
  schemas: [{ uri: 'file:///record.schema.json', fileMatch: ['*.yaml'], schema: recordSchema }],
});

/** The service keeps what it read of a document by its name: every opening has a name of its own. */
let opened = 0;

export const yaml: Contender = {
  name: 'yaml-language-server',
  notation: 'yaml',
  open: async (text) => {
    opened += 1;
    let document = TextDocument.create(`file:///${opened}.yaml`, 'yaml', 1, text);
    const findings = (await service.doValidation(document, false)).length;
    const edit = async (...change: Parameters<typeof letterChange>): Promise<number> => {
      document = TextDocument.update(document, [letterChange(...change)], document.version + 1);
      return (await service.doValidation(document, false)).length;
    };
    return { checked: { edit }, findings };
  },
};
