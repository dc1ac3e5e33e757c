import path from 'node:path';
import { build } from 'esbuild';
import type { Server } from './stdio.ts';

const folder = path.resolve('node_modules', '.cache', 'drillhand', 'benchmark');

/** Bundles a server as it is shipped: one small file. */
async function bundled(entry: string, name: string): Promise<string> {
  const outfile = path.join(folder, `${name}.cjs`);
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    mainFields: ['module', 'main'],
    legalComments: 'none',
    logLevel: 'warning',
  });
  return outfile;
}

/** Our server, the JSON service in the least server, and the least server alone. */
export async function buildServers(): Promise<{ ours: Server; json: Server; lines: Server }> {
  return {
    ours: { name: 'drillhand', notation: 'well', file: await bundled('server/lsp/node.ts', 'drillhand') },
    json: { name: 'JSON service', notation: 'json', file: await bundled('tests/benchmark/servers/json.ts', 'json') },
    lines: { name: 'lines only', notation: 'well', file: await bundled('tests/benchmark/servers/lines.ts', 'lines') },
  };
}
