// What the types let pass, and what they do not: compiled with `tsc --strict`, never run.
import init, {
  Book,
  Plan,
  PourwrightError,
  answerLines,
  calculate,
  columns,
  convert,
  initSync,
  saltMass,
  shots,
  type BookDocument,
  type Fault,
  type OrdersDocument,
  type PlanBudget,
  type PlanDocument,
  type Requests,
} from 'pourwright'
import initScalar, * as scalar from 'pourwright/scalar'
import initParts, * as parts from 'pourwright/parts'

export async function right(bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  await init()
  await init(new URL('https://example.test/pourwright.wasm'))
  initSync(bytes)

  const milliliters: number = convert({ amount: '1 cup', to: 'mL', measures: 'metric' }).value
  const made: number = shots({ pieces: 24, cavities: 4 }).shots
  const converted = calculate({ calculate: 'convert', amount: '1 cup', to: 'mL' })
  const value: number = converted.value
  const salt: Requests['salt'] = {
    calculate: 'salt',
    base_volume: '1 cup',
    base_density: { value: 1.03, unit: 'g/mL' },
    salt: { kind: 'salt', like: 'sodium-chloride' },
    loading: { finished_density: '1.12 g/mL' },
  }
  const grams: number = calculate(salt).mass.value

  for await (const answer of answerLines(new Response('{}').body!)) console.log(answer.length)
  for (const lines of [
    '{}',
    ['{}'],
    new Set([bytes]),
    new Blob(['{}']).stream().pipeThrough(new TextDecoderStream()),
  ]) {
    const answers: AsyncGenerator<string> = answerLines(lines)
    await answers.return(undefined)
  }

  const book: BookDocument = {
    format: 'pourwright/1.0',
    measures: 'us-customary',
    materials: { base: { kind: 'plastisol', density: '1.03 g/mL' } },
    formulas: { body: { per: '1 cup', base: 'base', doses: {} } },
    molds: { worm: { cavities: 4, cavity: '9.5 mL' } },
    bench: { cups: [{ holds: '2 cup' }], injector: { holds: '4 fl oz' } },
    ext: { anything: [1, 2] },
  }
  const orders: OrdersDocument = {
    format: 'pourwright/1.0',
    lines: [{ order: '1', mold: 'worm', formulas: ['body'], pieces: 24 }],
  }
  {
    using shop = new Book(book)
    const plan: PlanDocument = shop.plan(orders)
    const weighs: string[] = plan.pots.flatMap((pot) =>
      pot.stages.flatMap((stage) => stage.weigh.map((way) => way.material)),
    )
    console.log(shop.sheet(JSON.stringify(orders)), weighs)
    const mass: number = shop.request({ calculate: 'formula', formulas: ['body'] }).mass.value
    using open: Plan = shop.open(orders, { pots: 200 })
    const budget: PlanBudget = { pots: 200, thousand_steps: 1000 }
    console.log(shop.plan(orders, budget, () => performance.now() > 5000).pots.length)
    using again = Plan.from(open.document())
    const day: string | null | undefined = again.request({
      calculate: 'record',
      actuals: { format: 'pourwright/1.0', pots: {} },
    }).day
    console.log(mass, day, again.sheet(), again.notes(), Plan.from(JSON.stringify(plan)))
  }
  try {
    new Book('{}')
  } catch (error) {
    if (error instanceof PourwrightError) {
      const faults: Fault[] = error.faults
      console.log(error.code, error.path, error.help, faults)
    }
  }
  const grains: Float64Array = columns.saltMass({
    form: 'of-base',
    loading: Float64Array.of(0.1, 0.2),
    baseVolumeMl: 240,
    baseDensityGPerMl: 1,
    saltDensityGPerMl: 2,
  }).saltMassG
  console.log(milliliters, made, value, grams, grains)
}

export async function rightAlone(bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  await initScalar()
  await initParts()
  const planned: PlanDocument['pots'] = new parts.Book({} as BookDocument).plan({} as OrdersDocument).pots
  await parts.rest(bytes)
  scalar.initSync(bytes)
  const milliliters: number = scalar.convert({ amount: '1 cup', to: 'mL', measures: 'metric' }).value
  const same: typeof scalar.convert = convert
  try {
    same({ amount: '6 oz', to: 'g' })
  } catch (error) {
    if (error instanceof scalar.PourwrightError) {
      const faults: scalar.Fault[] = error.faults
      console.log(faults, error instanceof PourwrightError)
    }
  }
  console.log(milliliters, planned)
}

export function wrong(): void {
  // @ts-expect-error there is no such calculation
  calculate({ calculate: 'nothing' })
  // @ts-expect-error `to` is missing
  calculate({ calculate: 'convert', amount: '1 cup' })
  // @ts-expect-error a request of another calculation
  calculate({ calculate: 'dose', amount: '1 cup', to: 'mL' })
  // @ts-expect-error not in this response
  calculate({ calculate: 'convert', amount: '1 cup', to: 'mL' }).mass
  // @ts-expect-error a request is no line: give its text
  answerLines([{ calculate: 'convert', amount: '1 cup', to: 'mL' }])
  // @ts-expect-error there is no such parameter
  shots({ pieces: 24, cavities: 4, reject: 0.1 })
  // @ts-expect-error a number is wanted
  shots({ pieces: '24', cavities: 4 })
  // @ts-expect-error no such measuring system
  convert({ amount: '1 cup', to: 'mL', measures: 'us' })
  const mix = { loading: 0.3, baseVolumeMl: 240, baseDensityGPerMl: 1, saltDensityGPerMl: 2 }
  saltMass({ ...mix, form: 'of-base' })
  // @ts-expect-error no such form
  saltMass({ ...mix, form: 'of-bass' })
  // @ts-expect-error a text is not the same in a column
  columns.saltMass({ ...mix, form: Float64Array.of(1) })
  // @ts-expect-error a list is no column
  columns.saltMass({ ...mix, form: 'of-base', loading: [0.1, 0.2] })
  // @ts-expect-error documents are not among plain numbers
  scalar.Book
  // @ts-expect-error nor are requests
  scalar.calculate
  // @ts-expect-error there is no such parameter
  scalar.shots({ pieces: 24, cavities: 4, reject: 0.1 })
  // @ts-expect-error a book has more than its format
  new Book({ format: 'pourwright/1.0' })
  const shop = new Book('{}')
  // @ts-expect-error a plan is opened by `from`, or by its book
  new Plan('{}')
  // @ts-expect-error the book is open
  shop.request({ calculate: 'formula', formulas: ['body'], book: {} as BookDocument })
  // @ts-expect-error the plan is open
  Plan.from('{}').request({ calculate: 'record', actuals: {}, plan: {} as PlanDocument })
  // @ts-expect-error there is no such calculation
  shop.request({ calculate: 'nothing' })
  // @ts-expect-error not a kind of material
  const material: BookDocument['materials'] = { x: { kind: 'glue' } }
  console.log(material)
}
