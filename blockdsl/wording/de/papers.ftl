# Einheiten auf Papier: ein Schritt für jeden Abschnitt, einer, der sie verbindet.

papers-print = { $count ->
    [one] 1 Papier { $section } in Originalgröße drucken und das Testquadrat prüfen. Außerhalb der durchgezogenen Linie ausschneiden.
   *[other] { $count } Papiere { $section } in Originalgröße drucken und das Testquadrat prüfen. Außerhalb der durchgezogenen Linie auseinanderschneiden.
} Einen kurzen Stich einstellen, etwa { papers-stitch }.
papers-stitch = 1,5 mm
papers-piece = 1 { $area } ({ $fabric })
papers-pieces-many = die Teile { $first } bis { $last } der Tabelle
papers-paper = 1 Papier { $section }
papers-first = { $area } mit der rechten Seite nach oben auf die unbedruckte Seite des Papiers legen, über Fläche { $area } und rundum mindestens { $seam } darüber hinaus; stecken.
papers-second = { $area } rechts auf rechts auf { $first } legen, { $edge } { $seam } über die Linie zwischen den beiden Flächen hinaus. { $area } an der Linie zurückklappen. Der Stoff muss Fläche { $area } und rundum { $seam } bedecken; sonst verschieben, dann wieder nach vorn klappen und stecken.
papers-edge-long = eine lange Kante
papers-edge-cut = die lange Kante
papers-edge-short = eine kurze Kante
papers-edge-any = eine Kante
papers-sew = Das Papier wenden. Auf der Linie nähen, von { $seam } davor bis { $seam } dahinter. Das Papier an der Linie zurückfalten und die Nahtzugabe auf { $seam } zurückschneiden. { $area } über die Fläche bügeln.
papers-add = { $area } ebenso an der Linie zwischen { $before } und { $area } annähen.
papers-add-edge = { $area } ebenso annähen, { $edge } an der Linie zwischen { $before } und { $area }.
papers-add-many = { $first } bis { $last } ebenso in der Reihenfolge ihrer Nummern annähen, jedes an der Linie zu den vorigen.
papers-cut = Papier und Stoff auf der durchgezogenen Linie abschneiden. Das Papier noch nicht entfernen.
papers-along = { $length } an der Kante mit dem Zeichen { $join }

papers-as-in = Nähen wie in Schritt { $number }: zuerst { $first }, dann { $rest }.
papers-as-in-one = { $area } mit der rechten Seite nach oben auf die unbedruckte Seite des Papiers legen, über Fläche { $area } und rundum mindestens { $seam } darüber hinaus; stecken. Abschneiden wie in Schritt { $number }.
papers-then = { $area } an der Linie zwischen { $before } und { $area }
papers-then-edge = { $area }, { $edge } an der Linie zwischen { $before } und { $area }
papers-then-next = { $before }, dann { $next }
papers-then-many = { $first } bis { $last } in der Reihenfolge ihrer Nummern, jedes an der Linie zu den vorigen

papers-section = Abschnitt { $letters }
papers-sections = die verbundenen Abschnitte { $letters }
papers-sections-plain = die Abschnitte { $letters }
papers-join = { $before } rechts auf rechts auf { $after } legen, die Kanten mit dem Zeichen { $join } bündig, die { $marks } am selben Ende{ $pin ->
    [nest] . Nähte verzahnen und stecken.
    [match] . Naht auf Naht legen und stecken.
   *[plain] ; stecken.
} Auf der gestrichelten Linie nähen. Das Papier aus der Nahtzugabe entfernen. { $press }
papers-press-toward = Die Nahtzugaben Richtung { $section } bügeln.
papers-press-away = Die Nahtzugaben bügeln, sodass sie nicht unter { $section } liegen.
papers-marks-top = Zeichen OBEN
papers-marks-dot = Punkte
papers-out = Die Papiere entfernen.
papers-stay = Die Papiere entfernen, wenn die Kanten des Blocks an andere genäht sind.

# Das gedruckte Blatt mit den Papieren.

papers-sheet-top = OBEN
papers-sheet-dot = ●
papers-sheet-cut = zuschneiden { $size }
papers-sheet-half = ½ von { $size }
papers-sheet-section = Abschnitt { $section }
papers-sheet-copy = Blatt { $copy } von { $copies }
papers-sheet-print = { $count }-mal drucken
papers-sheet-area = Fläche
papers-sheet-fabric = Stoff
papers-sheet-letter = Teil
papers-sheet-size = Zuschnitt
papers-sheet-halves = ½: eines der beiden Dreiecke eines diagonal geschnittenen Quadrats.
papers-sheet-short = { $areas }: eine kurze Kante an der Linie.
papers-sheet-join = { $title }: { $joins } verbinden. Von der rechten Seite gesehen; Kanten, die aufeinandertreffen, haben dasselbe Zeichen.
papers-sheet-then = , dann{ " " }
papers-guide-title = So wird auf Papier genäht
papers-guide-subtitle = Papiere in Originalgröße für den Block von { $size } fertig
papers-guide-scale = Testquadrat und Balken unten nachmessen. Stimmen sie nicht, noch einmal in Originalgröße drucken. Die Papiere außerhalb der durchgezogenen Linie auseinanderschneiden.
papers-guide-sew = Die Papiere sind Spiegelbilder: diese bedruckte Seite ist die Rückseite. Der Stoff kommt auf die unbedruckte Seite. Von der bedruckten Seite auf den dicken Linien nähen, in der Reihenfolge der Nummern.
papers-guide-pieces = Einen kurzen Stich einstellen, etwa { papers-stitch }. Die Tabelle neben jedem Papier nennt Stoff und Maß für jede Fläche. Die Zuschnitte sind größer als ihre Flächen: jede Nahtzugabe auf { $seam } zurückschneiden.
papers-guide-cut = Papier und Stoff auf der durchgezogenen Linie abschneiden, { $seam } außerhalb der gestrichelten. Abschnitte auf der gestrichelten Linie verbinden, Kanten mit demselben Zeichen bündig. Die Papiere erst entfernen, wenn die Schritte es sagen.
papers-care-cutter = Den Rollschneider nach jedem Schnitt schließen und auf der Matte vom Körper weg schneiden.
papers-care-fold = Das Papier aus dem Weg falten, bevor daneben Stoff geschnitten wird.
papers-care-iron = Von der Stoffseite trocken bügeln: unter einem heißen Eisen löst sich Toner.
papers-care-blades = Klingen und Nadeln von Kindern und Haustieren fernhalten.
