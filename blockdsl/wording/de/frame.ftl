# Der Rahmen jedes Schrittes: Titel, was genommen wird, Maße, Aufzählungen.

list-pair = { $first } und { $last }
# Nach einem Eintrag, der selbst „und“ enthält: Reihen 1 und 3 sowie A.
list-more = { $first } sowie { $last }
list-comma = ,{ " " }
list-semicolon = ;{ " " }

length = { $length } { $unit ->
    [in] Zoll
   *[other] { $unit }
}
# Eine Zahl ohne Einheit, die auf keinem Lineal steht.
figure-about = etwa { $figure }
length-about = etwa { $length } { $unit ->
    [in] Zoll
   *[other] { $unit }
}
size = { $width } × { $height } { $unit ->
    [in] Zoll
   *[other] { $unit }
}
size-about = etwa { $width } × { $height } { $unit ->
    [in] Zoll
   *[other] { $unit }
}

step-make = { $count }-mal
step-size = { $size } fertig
step-take = { NAME($list, case: "accusative") } nehmen.
step-as-in = Mit diesen Teilen wie in Schritt { $number } arbeiten.
step-take-each = Jeweils { NAME($list, case: "accusative") } nehmen.

# Am Fuß eines Schrittes, der ein Bild für sich ist.
step-care = Klinge schließen, auf das heiße Eisen achten, Nadeln zählen; Kinder und Haustiere fernhalten.
