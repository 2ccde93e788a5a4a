# Bücher und Webseiten: Titel, Inhalt, Kapitel, erste Seiten, Register, Übersichten.

book-subject = Anleitungsbuch mit { $count }
book-to-sew = { $count } zum Zuschneiden und Nähen
book-contents = Inhalt
book-begin = Zu Beginn
book-blocks = Die Blöcke
book-chapter = Kapitel { $number }
book-in-this-chapter = In diesem Kapitel
book-used-by = Verwendet von { $blocks }
book-index = Register
book-test-page = Testseite
book-techniques = Techniken
book-at-the-back = Am Ende des Buches
book-quilts = Quilts
book-quilt-size = Quilt, { $size }
book-other-colorways = Weitere Farbvarianten
book-elsewhere = Zuschneiden und Nähen eines Blocks { $block }
book-read-first = Vor dem ersten Schnitt lesen, was die Maße bedeuten und worauf zu achten ist
book-on-page = { $what }: Seite
book-other-sizes = Die Maße in den Schritten gelten für den Block von { $size }. Für die anderen Größen sind die Schritte dieselben; ihre Maße stehen bei den Einheiten.
book-templates = Teile mit dem Vermerk „nach Schablone“ werden um Schablonen in Originalgröße geschnitten, die für jede Größe aus einer eigenen Datei gedruckt werden: ihr Testquadrat muss 1 Zoll messen. Die hier genannten Maße sagen, wie viel Stoff jedes Teil braucht.
index-title = Blöcke nach Name, Größe, Familie und Anzahl der Teile
index-by-name = Nach Name
index-by-size = Nach fertiger Größe
index-by-family = Nach Familie
index-by-patches = Nach Anzahl der Teile
index-caption = Alle Blöcke nach Name
index-head-block = Block
index-head-finished = fertig
index-head-patches = Teile
index-head-fabrics = Stoffe
site-block-line = { $sizes }; { $patches }, { $fabrics }
site-quilt-line = Quilt, { $size }; { $blocks }
site-sizes = Größen
site-at-size = { $size } fertig
site-skip = Zum Inhalt dieser Seite
site-before = Zurück
site-next = Weiter
site-turn = Vorige und nächste Seite
site-done = erledigt: { $what }
site-enlarge = Dieses Bild vergrößern
site-choose-size = Fertiges Maß
site-search = Suche
site-find = Gesuchte Wörter
site-found = Gefundene Seiten:
site-lesson = Anleitung: { $lesson }
site-used-by = Blöcke und Quilts, die so genäht werden
site-print = Zum Ausdrucken
site-pdf-sheet = Anleitungsblatt (PDF)
site-pdf-templates = Schablonen, { $size } (PDF)
site-pdf-foundation = Papiere zum Aufnähen, { $size } (PDF)
site-pdf-papers = Papiere zum Umfalten, { $size } (PDF)
gallery-subject = Übersicht über { $blocks }
gallery-by-family = { $blocks }, nach Familie
gallery-line = { $size }; { $patches }

# --- eine Seite mit Möglichkeiten ------------------------------------------------------------------

possible-title = Anordnungen für { $block }
possible-subject = Ein Block in { $quilts }
possible-under = { $quilts }, die unähnlichsten zuerst
possible-about = Die Zeilen unter einem Quilt sind seine Anordnung: Setze sie unter eine Zeile, die deinem Quilt einen Namen gibt. Wie viel von jedem Stoff zu kaufen ist, ist für das Top allein geschätzt und kann etwas mehr sein, als der Zuschneideplan braucht.
possible-name = { $number }. { $setting }
possible-turned = manche Blöcke gedreht
possible-colorway = manche in { $colorway }
possible-plain = mit einfarbigen Quadraten aus { $fabric }
possible-sashing = mit Zwischenstreifen
possible-posts = mit Zwischenstreifen und Eckquadraten
possible-size = { $size }; { $blocks }
possible-cloth = { $fabric } { $buy }

# --- Lektionen -------------------------------------------------------------------------------------

sign-right-side = rechte Seite
sign-wrong-side = linke Seite
sign-pencil-line = Bleistiftlinie
sign-seam = Naht
sign-cut = Schnitt
sign-press = Bügelrichtung
hand-right = mit rechts
hand-left = mit links

# --- bevor es losgeht ------------------------------------------------------------------------------

begin-title = Bevor es losgeht
begin-reading = Wie die Seiten zu lesen sind
begin-reading-pictures = Jeder Block beginnt mit seinen Bildern: dem Block in Farbe und einem Bild, in dem jedes Teil seinen Buchstaben hat. Teile mit demselben Buchstaben haben dieselbe Form und Größe; ein r dahinter bezeichnet ein Spiegelbild.
begin-reading-cutting = Die Zuschneidetabelle sagt Stoff für Stoff, wie viele Teile zuzuschneiden sind und wie groß. Wo das Buch einen Block in mehreren Größen bringt, hat jede ihre eigene Spalte: eine wählen und in dieser Spalte bleiben.
begin-reading-units = Darunter stehen die Einheiten mit dem Maß, das jede vor dem Zusammennähen haben soll. Zwischendurch messen geht schneller als auftrennen.
begin-reading-quilts = Ein Quilt beginnt mit dem Einkauf und dem Zuschnitt jedes Stoffes für den ganzen Quilt, Streifen für Streifen gezeichnet. Danach folgen die Anzahl der Blöcke, das Zusammensetzen, die Maße zwischendurch und das Fertigstellen.
begin-printing = Drucken
begin-printing-size = In Originalgröße drucken, 100 %, nie an die Seite angepasst. Die Testseite am Ende des Buches, Seite { $page }, zeigt, ob der Drucker das tut: diese Seite zuerst drucken und mit dem Lineal nachmessen, mit dem zugeschnitten wird.
begin-printing-scale = Tabellen und Bilder lassen sich in jedem Maßstab drucken. Schablonen nicht.
begin-first = Erst ein Block
begin-first-words = Einen Block zuschneiden und nähen, bevor für den ganzen Quilt zugeschnitten wird. Stoff dehnt sich, im schrägen Fadenlauf am meisten, und jeder näht und bügelt ein wenig anders: ein Block zeigt es, solange noch Stoff übrig ist.

# Die Vorsichtsregeln in voller Länge, einmal in jedem Buch.
caution-cutter = Der Rollschneider
    .words = Ein Rollschneider ist scharf wie eine Rasierklinge. Die Klinge bei jedem Ablegen schließen, auch für einen Augenblick; vom Körper weg schneiden, auf einer Schneidematte, die Finger hinter der Kante des Lineals; eine Klinge, die Fäden stehen lässt, wechseln, statt fester zu drücken, und die alte einwickeln, bevor sie in den Müll kommt.
caution-iron = Das Bügeleisen
    .words = Hände, Haare und Kabel von der Sohle fernhalten, auf den Dampf achten und das Eisen auf seine Ferse oder Ablage stellen. Ausschalten und abkühlen lassen, wenn man den Tisch verlässt. Die Hitze zuerst an einem Rest prüfen.
caution-needles = Nadeln
    .words = Steck- und Nähnadeln vorher und nachher zählen und am Ende des Tages mit einem Magneten über den Boden gehen; Magnete von Kindern und von Herzschrittmachern fernhalten. Nicht über Stecknadeln nähen; die Finger von der laufenden Nadel fernhalten und die Maschine ausschalten, bevor die Nadel gewechselt wird.
caution-others = Die anderen im Raum
    .words = Rollschneider, Nadeln, Kabel und heiße Bügeleisen außer Reichweite von Kindern und Haustieren halten. Bei gutem Licht arbeiten, bequem sitzen und bei Müdigkeit aufhören: dann schneidet man sich in die Finger.
caution-tools = Werkzeuge und Vorschriften
    .words = Die Anleitungen der eigenen Werkzeuge und Maschinen befolgen; wo sie von diesem Buch abweichen, gehen sie vor. Das gilt auch für die örtlichen Vorschriften für Werkstätten und Schulen.
