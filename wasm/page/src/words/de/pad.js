// The pad for another amount than the sheet's.
export default {
  whatWentIn: 'Wie viel {material} ist insgesamt drin?',
  whatMore: 'Wie viel {material} kam jetzt hinein, ohne das, was schon im Topf war?',
  by_balance: 'Waage',
  by_cup: 'Becher',
  by_spoons: 'Löffel',
  by_drops: 'Tropfen',
  nothing: 'noch nichts',
  drops: '{amount} Tropfen',
  grams: '{amount} g',
  decimal: 'Komma',
  back: 'letztes zurücknehmen',
  within: 'In der Toleranz: weiter.',
  outside: 'Außerhalb der Toleranz. So geht es weiter:',
  keep: '{amount} eingegossen',
  close: 'Doch wie geplant',
  somethingElse: 'Etwas anderes ist hineingekommen',
}
