// Reading of CSV: what RFC 4180 states, and what spreadsheets write.
import assert from 'node:assert/strict'
import { test } from 'node:test'
import { MOST_ROWS, delimiterOf, hasCommas, readCsv, textOf, withPoint } from '../src/book-csv.js'

const cells = (text, delimiter) => readCsv(text, delimiter).rows.map((row) => row.cells)

test('reads what RFC 4180 states', () => {
  // Its rules 1 to 7, with their own examples.
  assert.deepEqual(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n'), [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ])
  assert.deepEqual(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx'), [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ])
  assert.deepEqual(cells('"aaa","bbb","ccc"\r\nzzz,yyy,xxx'), [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ])
  assert.deepEqual(cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx'), [
    ['aaa', 'b\r\nbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ])
  assert.deepEqual(cells('"aaa","b""bb","ccc"'), [['aaa', 'b"bb', 'ccc']])
  assert.deepEqual(cells('a,"b,c",d'), [['a', 'b,c', 'd']])
})

test('reads semicolons, tabs, a mark, any end of line, empty rows', () => {
  assert.equal(delimiterOf('name;amount\n"a, b, c";1,5 g'), ';')
  assert.equal(delimiterOf('"a;b;c;d",x,y\n'), ',')
  assert.equal(delimiterOf('one\ttwo\n'), '\t')
  assert.deepEqual(cells('\uFEFFname;amount\r"plum ";1,5 g\n\n;;\n x ; y '), [
    ['name', 'amount'],
    ['plum ', '1,5 g'],
    ['x', 'y'],
  ])
  const { rows } = readCsv('a,b\n\n,,\n1,2\n\n3,4\n\n')
  assert.deepEqual(
    rows.map(({ number }) => number),
    [1, 4, 6],
  )
  // Empty columns at the end are no cells; one in the middle is.
  assert.deepEqual(cells('a,b,,\n1,,,\n,2'), [['a', 'b'], ['1'], ['', '2']])
  assert.deepEqual(cells(''), [])
  assert.deepEqual(cells('\n\n'), [])
})

test('reports faults with their rows', () => {
  const faults = (text) => readCsv(text).faults.map(({ row, message }) => `${row}: ${message}`)
  assert.deepEqual(faults('a,b\n1,2\n'), [])
  assert.deepEqual(faults('a,b\n1,2,3\n4,5'), ['2: This row has 3 cells, the first row 2.'])
  assert.deepEqual(faults('a,b\n"1"x,2'), ['2: “x” comes after the quotes of a cell.'])
  assert.deepEqual(faults('a,b\n\n1,"2\n3'), ['3: A quoted cell does not end.'])
  const long = `a\n${'1\n'.repeat(MOST_ROWS)}`
  assert.deepEqual(faults(long), [`${MOST_ROWS + 1}: The file has 2,001 rows; at most 2,000 are read at once.`])
})

test('gives back cells that were written', () => {
  const parts = ['', 'plum', '1,5 g', 'a;b', '"', 'line\nbreak', 'two\r\nlines', ' ', 'x"y"', '¼ cup', '\t']
  let seed = 7
  const next = (below) => {
    seed = (seed * 48271) % 2147483647
    return seed % below
  }
  for (let round = 0; round < 400; round += 1) {
    const delimiter = [',', ';', '\t'][next(3)]
    const width = 1 + next(4)
    const table = Array.from({ length: 1 + next(5) }, () => [
      `k${next(9)}`,
      ...Array.from({ length: width }, () => parts[next(parts.length)]),
      'end',
    ])
    const quote = (cell) => (/[";,\t\r\n]|^ | $/.test(cell) || next(2) ? `"${cell.replaceAll('"', '""')}"` : cell)
    const text = table.map((row) => row.map(quote).join(delimiter)).join(['\n', '\r\n'][next(2)])
    const read = readCsv(text, delimiter)
    assert.deepEqual(read.faults, [], text)
    assert.deepEqual(
      read.rows.map((row) => row.cells),
      table,
      text,
    )
  }
})

test('reads decimal commas and older encodings', () => {
  assert.equal(withPoint('1,5 g'), '1.5 g')
  assert.equal(withPoint('dusk, dark'), 'dusk, dark')
  assert.ok(hasCommas(['x', '1,5 g']))
  assert.ok(!hasCommas(['1,5 g', '2.5 g']))
  const bytes = (...list) => new Uint8Array(list)
  assert.deepEqual(textOf(new TextEncoder().encode('¼ cup')), { text: '¼ cup', encoding: 'utf-8' })
  assert.deepEqual(textOf(bytes(0xbc, 0x20, 0x63)), { text: '¼ c', encoding: 'windows-1252' })
  assert.deepEqual(textOf(bytes(0xff, 0xfe, 0x61, 0x00)), { text: 'a', encoding: 'utf-16le' })
})
