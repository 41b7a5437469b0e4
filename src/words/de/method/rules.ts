import type { Words } from '../../keys.ts';

export const totals: Words['method']['totals'] = {
  title: 'Summen',
  rules: [
    'Geld wird in ganzen Cent gezählt, bei anderen Währungen in deren kleinster Einheit. Gutschriften (Verkäufe, Erstattungen, zurückgezahltes Pfand) sind eigene Zeilen und werden abgezogen. Währungen werden nie zusammengezählt: Ein Betrag in fremder Währung zählt zum neuesten aufgezeichneten Kurs an seinem Tag oder davor, kaufmännisch gerundet.',
    'Stunden sind ganze Minuten. Eine Phase beginnt mit ihrer ersten Stundenzeile und endet an dem Tag, an dem sie für fertig erklärt wurde.',
    'Ein Eintrag zeigt die Summen seines Tages: die Zeilen bis einschließlich dieses Tages. Was er hinzugebracht hat, ist der Unterschied zum Eintrag davor.',
    'Eine falsche Zeile wird nie überschrieben. Eine andere Zeile berichtigt sie und zählt von dem Tag an, an dem das aufgeschrieben wurde; ein früherer Eintrag zeigt weiter, was damals angenommen wurde. Eine zurückgenommene Zeile ist eine Berichtigung auf nichts.',
    'Steuer wird Zeile für Zeile gerechnet, im Betrag enthalten als a · r / (100 + r), zum Betrag hinzu als a · r / 100, kaufmännisch auf ganze Cent gerundet.',
    'Ein Betrag, den sich mehrere Phasen oder Teile teilen, wird nach angegebenen Beträgen oder Gewichten nach den größten Resten verteilt: Jeder erhält seinen genauen Anteil, auf ganze Cent abgeschnitten, und was übrig bleibt, geht an die größten abgeschnittenen Reste, bei Gleichstand an den ersten. Nichts geht verloren.',
    'Geschenke und Tauschgeschäfte stehen mit einem angegebenen Wert, Werkstattgerät ganz, gar nicht oder anteilig und eigene Arbeit mit einem angegebenen Stundensatz oder ohne. Die Regeln des Projekts sagen, was in seinen Summen enthalten ist; alles Übrige wird gesondert gezeigt.',
    'Zurückgehaltene Beträge zählen in einer einzigen Summe je Kostenart, datiert auf den neuesten Tag, damit kein Unterschied zweier Summen einen davon verrät.',
    '„Heute“ ist auf diesen Seiten der Tag der neuesten Zeile eines Projekts, nicht der Tag, an dem dies gelesen wird.',
    'Der Stand eines Teils an einem Tag ist der am weitesten fortgeschrittene seiner datierten Schritte: gesucht, bestellt, vorhanden, eingebaut, verschrottet, verkauft. Ein Teil ohne solchen Schritt ist vermerkt.',
  ],
};

export const measured: Words['method']['measured'] = {
  title: 'Gemessene Werte',
  rules: [
    'Eine Messung behält ihre Einzelwerte. Ihr Wert ist das Mittel derer, die zählen; ausgeschlossene bleiben stehen, durchgestrichen und mit Begründung.',
    'Die Messunsicherheit folgt dem GUM (JCGM 100:2008). Wiederholungen ergeben s/√n mit n − 1 Freiheitsgraden (4.2.3). Ein Ziffernschritt oder Skalenschritt δ ergibt δ/√12, eine angegebene Fehlergrenze ±a ergibt a/√3, ein U aus einem Kalibrierschein mit seinem k ergibt U/k (4.3). Zusammengefasst werden sie als Wurzel aus der Summe der Quadrate.',
    'U ist die erweiterte Unsicherheit bei 95 %: k mal u, mit k aus der Studentschen t-Verteilung für die effektive Zahl der Freiheitsgrade (Welch–Satterthwaite, G.4.1), diese auf 0,1 gerundet und dann abgerundet.',
    'Messungen mit derselben Nullstellung eines Messmittels haben dessen Fehler gemeinsam, und gemeinsam aufgenommene Messungen ihre Streuung. Gemeinsames wird durch jede Formel hindurch verfolgt (5.2) und hebt sich in einer Differenz auf.',
    'Die Zahl der gezeigten Stellen richtet sich nach zwei zählenden Stellen von U. Ein Wert ohne ± hatte keine bekannte Messunsicherheit und behält die Stellen, mit denen er abgelesen wurde.',
    'Vorher und nachher gelten nur dann als {changed}, wenn die Differenz größer ist als ihr eigenes U.',
    'Eine Grenze ist eingehalten, wenn der Wert mit seinem ganzen U innerhalb liegt (auf der Grenze ist sie eingehalten), nicht eingehalten, wenn alles außerhalb liegt, und sonst {undecided}, nach dem Gedanken der ISO 14253-1. Ein vor der Arbeit gesetztes Ziel ist im selben Sinn {reached}.',
  ],
};

export const calculated: Words['method']['calculated'] = {
  title: 'Berechnete Werte',
  rules: [
    'Ein Wert in Klammern ist berechnet, nicht gemessen, wie es auf Zeichnungen üblich ist. Seine Seite zeigt die Formel, mit Formelzeichen und mit eingesetzten Zahlen.',
    'Seine Messunsicherheit wird mit den Empfindlichkeiten der Formel fortgepflanzt (GUM 5.1). Das Messunsicherheitsbudget zeigt, was jede Eingangsgröße beiträgt.',
    'Der jeweils neueste Wert wird durch Ziehungen aus den Verteilungen seiner Eingangsgrößen geprüft (JCGM 101:2008): Studentsche t-Verteilung für Wiederholungen, gleichverteilt zwischen den Enden für einen Schritt oder eine angegebene Fehlergrenze, Normalverteilung für einen Kalibrierschein. Der lineare Teil der Formel, dessen Verteilung ohne Ziehen bekannt ist, steuert die Ziehungen; gezogen wird so oft, bis beide Enden des Bereichs so sicher sind wie durch eine Million unabhängiger Ziehungen, und nicht öfter als etwa eine Million Mal. Liegt ein Ende des gezogenen Bereichs weiter von ± U entfernt als die Hälfte der letzten von zwei Stellen von u und drei Standardabweichungen des Ziehungsergebnisses, so wird der gezogene Bereich gezeigt, als zwei Abweichungen.',
    'Er wird für einen Tag berechnet, an dem alle seine Eingangsgrößen im selben Zustand gemessen waren; bleibende Eingangsgrößen wie ein Radstand werden aus ihrer neuesten früheren Messung übernommen.',
  ],
};
