const asked = Number(process.env.DRILLHAND_FUZZ_RUNS);

/** Edits to try: `DRILLHAND_FUZZ_RUNS=100000` for the full count. */
export const edits = asked > 0 ? asked : 2000;

/** Files to try: a tenth of the edits where those are asked for. */
export const files = asked > 0 ? Math.ceil(asked / 10) : 500;

/** How long a test may take: the full count needs its time. */
export const patience = { timeout: 120_000 + edits * 60 };
