// What the records show of the numbers of the book.
export default {
  title: 'Was das Buch gelernt hat',
  from: {
    one: 'Aus den Protokollen von {count} Tag. Eine Zahl wird angeboten, sobald vier Tage sie zeigen.',
    other: 'Aus den Protokollen von {count} Tagen. Eine Zahl wird angeboten, sobald vier Tage sie zeigen.',
  },
  undated: {
    one: '{count} Protokoll hat keinen Tag (wie 2027-03-02) und zählt nicht.',
    other: '{count} Protokolle haben keinen Tag (wie 2027-03-02) und zählen nicht.',
  },
  nothing: 'Es gibt nichts zu übernehmen.',
  unknown: 'nicht angegeben',
  becomes: 'wird zu',
  days: {
    one: 'Aus {count} Tag.',
    other: 'Aus {count} Tagen.',
  },
  accept: 'Ins Buch übernehmen',
  accepted: 'Gelernt: {what}.',
  questions: 'Sehen Sie zuerst hier nach',
  confirmed: 'Wie im Buch',
  notYet: 'Noch nicht bekannt',
}
