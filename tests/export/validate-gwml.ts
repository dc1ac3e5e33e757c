// Every sample as GroundWaterML against the published schemas, which the project does not hold:
// npm run validate:gwml -- FOLDER, where FOLDER has ogc/gwml/2.2/gwml2-well.xsd with what it imports beside it.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { validateXML } from 'xmllint-wasm';
import { gwmlFormat } from '../../server/export/gwml/index.ts';
import { recordOf } from '../record/record-of.ts';
import { contextOf } from './context-of.ts';

const entry = 'ogc/gwml/2.2/gwml2-well.xsd';
const megabyte = 16; // pages of WebAssembly memory

const everySchema = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.xsd'))
    .map((name) => ({
      fileName: name.split(path.sep).join('/'),
      contents: readFileSync(path.join(folder, name), 'utf8'),
    }));

const start = {
  fileName: 'start.xsd',
  contents: `<schema xmlns="http://www.w3.org/2001/XMLSchema"><import namespace="http://www.opengis.net/gwml-well/2.2" schemaLocation="${entry}"/></schema>`,
};

async function documentOf(name: string) {
  const text = readFileSync(path.join('samples', name), 'utf8');
  const { files } = await gwmlFormat.make(recordOf(text), contextOf(text, name));
  return { fileName: `${name.replaceAll(path.sep, '_')}.xml`, contents: String(files[0]?.content) };
}

async function main([folder]: readonly string[]): Promise<number> {
  if (folder === undefined || !existsSync(path.join(folder, entry))) {
    console.error(`name the folder of the OGC schemas: one that has ${entry} in it`);
    return 2;
  }
  const names = readdirSync('samples', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.well'));
  const { errors, rawOutput } = await validateXML({
    xml: await Promise.all(names.map(documentOf)),
    schema: [start],
    preload: everySchema(folder),
    initialMemoryPages: 64 * megabyte,
    maxMemoryPages: 1024 * megabyte,
  });
  console.log(rawOutput.trim());
  console.log(`${names.length} samples, ${errors.length} faults`);
  return names.length > 0 && errors.length === 0 ? 0 : 1;
}

process.exitCode = await main(process.argv.slice(2));
