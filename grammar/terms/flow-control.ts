import { common, from, list } from './build.ts';

const said = from(common);

export const flowControl = list('flow-control', 'Control of a flowing well', [
  said('valve', 'valved|control valve|gate valve|ball valve|shut off valve', 'A valve stops the flow.'),
  said('overflow pipe', 'overflow|piped away|drain pipe|discharge pipe', 'A pipe leads the flow away.'),
  said('packer', 'shut in packer', 'A packer in the casing stops the flow.'),
  said('sealed cap', 'welded cap|cap|plugged', 'A tight cap stops the flow.'),
  said('standpipe', 'casing raised|extended casing|stand pipe', 'The casing stands higher than the water rises.'),
  said('shut in', 'controlled|shut', 'The flow is stopped.'),
  said('uncontrolled', 'free flowing|not controlled|no control', 'The flow is not stopped.'),
  said('no leak', 'no leaks|no leakage|tight|dry outside', 'No water comes up outside the casing.'),
  said('leak', 'leaks|leaking|leakage|leaks outside casing', 'Water comes up outside the casing.'),
]);
