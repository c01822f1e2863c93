// Clocks, and whether the screen stays on.
export default {
  and: '{one} und {other}',
  burst: 'Topf {pot}, Heizstoß {number} von {of}',
  hold: 'Topf {pot}, {what}',
  clock: 'Uhr',
  over: 'Abgelaufen: {label}',
  said: 'Abgelaufen: {label}.',
  stop: 'Stopp',
  stopOf: 'Uhr anhalten: {label}',
  silent: 'Berühren Sie die Seite, damit die Uhren läuten.',
  sleeps:
    'Der Bildschirm kann dunkel werden, während eine Uhr läuft, und dann läutet sie nicht. Dieser Browser hält ihn nicht an: lassen Sie ihn vom Gerät selbst anhalten.',
  sleepsPlain:
    'Der Bildschirm kann dunkel werden, während eine Uhr läuft, und dann läutet sie nicht. Die Seite kam über einfaches http von einem anderen Rechner: darum hält der Browser weder den Bildschirm an, noch lässt er die Seite ohne ihren Server arbeiten. Lassen Sie den Bildschirm vom Gerät anhalten, oder liefern Sie die Seite mit einem Zertifikat aus: „{command}“.',
}
