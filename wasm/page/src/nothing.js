// What goes in of which too little is missing for any tool: there is nothing to do, and no box for it.

/** Whether an entry of a weigh list is that. */
export const isNothing = ({ best }) => best.gives.value === 0

/** A request to go on with `plan` that ticks such items of steps that are else done. */
export function withNothing(plan, request) {
  const ticked = new Set(request.ticks)
  const pots = new Map(plan.pots.map((pot) => [pot.pot, pot]))
  const nothing = plan.steps
    .filter(({ kind }) => kind === 'measure' || kind === 'add')
    .flatMap(({ at: [{ pot, stage }], items }) => {
      const { weigh } = pots.get(pot).stages[stage - 1]
      const own = items.filter((item) => isNothing(weigh[item.weigh - 1]))
      return own.length && items.every((item) => own.includes(item) || ticked.has(item.id)) ? own : []
    })
  return { ...request, ticks: [...request.ticks, ...nothing.map(({ id }) => id)] }
}
