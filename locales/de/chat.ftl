# reviewed: nobody yet

### Was der Chat selbst sagt. Die Wörter für Maschinen, Fehler und Prüfungen stehen in knowledge.ftl.
### Anrede: Sie. Kurze Sätze, Alltagswörter: gelesen wird neben einer Maschine, die nicht läuft.

## The first minute

# en: b63d1fd5
hello = Guten Tag, hier ist { $shop }. Ich stelle ein paar kurze Fragen zu Ihrer Maschine. Dann wissen wir, was es sein kann, bevor jemand losfährt.
# en: 3885c556
consent = Was Sie schreiben und schicken, wird für diese Reparatur aufgehoben. Schreiben Sie „vergessen“, wenn es gelöscht werden soll.
# en: 560cc3a0
consent-link = Was Sie schreiben und schicken, wird für diese Reparatur aufgehoben: { $link }
# en: 477a0bc3
noted = Notiert: { $what }.
# en: 7e705f43
named-value = { $name } { $value }
# en: 08868587
named-answer = { $what }
# en: 822b5377
ask-safety = Zuerst: Sind alle in Sicherheit?
# en: a30d6f78
ask-safety-how = Ist jemand verletzt? Sehen Sie Feuer oder Rauch, riecht es nach Kraftstoff, ist die Batterie aufgebläht oder zischt sie?
# en: 157cfa1b
answer-all-clear = Keine Gefahr
# en: b17a2a1a
safety-unsure = Dann schauen Sie von dort aus, wo Sie stehen, bevor Sie etwas anfassen. Wenn Sie etwas davon sehen, riechen oder hören, bleiben Sie weg und schreiben Sie es gleich.
# en: fcc20d7e
ask-kind = Was für eine Maschine ist es?
# en: ab8e9222
known-again = Wieder diese Maschine: { $machine }?
# en: 6bf97e46
known-again-fuel = Wieder diese Maschine: { $machine }, { $fuel }?
# en: 9c8b4841
answer-another-machine = Eine andere Maschine
# en: a498407a
ask-fuel = Womit läuft sie?
# en: 3cb6c628
fuel-petrol = Benzin
# en: 9a98afc6
fuel-diesel = Diesel
# en: e1765dd7
fuel-gas = Gas
# en: e2ee57ed
fuel-unknown = Kraftstoff nicht bekannt

## Questions and answers

# en: e1008e96
answer-dont-know = Weiß ich nicht
# en: a30a382a
answer-none-of-these = Nichts davon
# en: a68c7f39
answer-other = Etwas anderes
# en: 21993e86
answer-nothing-more = Sonst nichts
# en: 46cc947c
answer-skip = Überspringen
# en: 3e44596f
answer-done = Fertig
# en: ef86adc0
answer-cannot = Das kann ich nicht
# en: d533b110
answer-show = Zeigen
# en: b3674ada
answer-more = Mehr …
# en: 88b58c26
answer-noted = notiert
# en: 9e500d8c
answer-photo-got = Foto ist da
# en: e10631fb
answered = Ihre Antwort: { $answer }
# en: cea5214e
about-more =
    { $count ->
        [one] Noch etwa eine Frage.
       *[other] Noch etwa { $count } Fragen.
    }
# en: 69575856
about-more-rises =
    { $count ->
        [one] Durch diese Antwort kommt etwas Neues in Frage: noch etwa eine Frage mehr.
       *[other] Durch diese Antwort kommt etwas Neues in Frage: noch etwa { $count } Fragen mehr.
    }
# en: f356c1d9
type-a-reading = Schreiben Sie den Messwert so: 12,4 { $unit }.
# en: 7f2a93fd
not-understood = Das habe ich nicht verstanden. Ich hebe es für den Monteur auf. Bitte drücken Sie eine Antwort, oder sagen Sie es mit anderen Worten.
# en: ff4966eb
passed-unclear = Auch das habe ich nicht verstanden. Ich mache ohne Antwort weiter und hebe Ihre Worte für den Monteur auf.
# en: 7d418b5d
choose-one = Bitte drücken Sie unten eine Antwort, oder schreiben Sie sie.
# en: 4100c587
step-is-closed = Diese Frage ist erledigt. Das hier ist die offene:
# en: f6ffcdb0
here-we-are = So weit sind wir:
# en: 13c95674
asked-again = Das noch einmal, bitte.
# en: c11f51ea
taken-back = Ich habe das zurückgenommen.
# en: 09fee779
nothing-before = Davor ist nichts mehr.
# en: 858811e3
nothing-to-change = Da gibt es nichts zu ändern.
# en: 681f32a3
no-answers-yet = Sie haben noch nichts beantwortet.
# en: 88dab10b
which-answer = Welche Antwort wollen Sie ändern?
# en: 0d6d847b
answer-in-list = { $name }: { $value }
# en: db7d689a
ask-meaning = Was meinen Sie damit?
# en: b9fd7f11
implausible = { $value } kann hier nicht stimmen: Ich erwarte { $low } bis { $high } { $unit }. Bitte sehen Sie noch einmal hin, und schreiben Sie mir, wo Sie gemessen haben.
# en: e5e8fb1c
reading-unexplained = { $what }, { $value }: Das passt nicht zu den anderen Messwerten. Nichts, was ich kenne, ergibt sie alle zugleich. Wo haben Sie die Messspitzen angesetzt? Bitte messen Sie noch einmal, wenn es geht, und schreiben Sie, was Sie ablesen.
# en: 823c3d54
reading-probes = Wo an der Batterie haben Sie die Messspitzen angesetzt?
# en: fb93e145
press-probes-post = An den Polen
# en: 1dd13d36
press-probes-clamp = An den Klemmen
# en: ad8cea8b
press-probes-unknown = Nicht sicher
# en: c7fc33c3
probes-noted = Notiert, wo Sie gemessen haben.
# en: 582a6358
edited-kept = Die geänderte Nachricht habe ich für die Werkstatt aufgehoben. Um eine Antwort zu ändern, schreiben Sie sie neu, oder drücken Sie „Mehr“.
# en: 4117cd66
cannot-use-that = Solche Nachrichten kann ich nicht lesen. Bitte schreiben Sie, drücken Sie einen Knopf, oder schicken Sie ein Foto.
# en: d754f315
unknown-command = Diesen Befehl kenne ich nicht. Schreiben Sie einfach, was los ist, oder schreiben Sie „Hilfe“.

## Trying things

# en: 6be6f5ea
try-again-now = Starten Sie jetzt einmal, vom Sitz aus. Was passiert?
# en: e076f417
try-safely = Im Freien. Setzen Sie sich auf den Sitz. Bremse angezogen, Gang heraus, Mähwerk oder Zapfwelle aus, niemand in der Nähe. Schlüssel drehen, bis zehn zählen, loslassen.
# en: 03b1983c
try-as-before = Wie vorhin: vom Sitz aus, Bremse angezogen, Gang heraus, Zapfwelle aus, niemand in der Nähe. Bis zehn zählen, loslassen.
# en: 13239ce1
starter-rests = Der Anlasser muss zwei Minuten abkühlen. Vor { $time } bitte nicht starten.
# en: 3a69fa83
outcome-cured = Springt an und läuft
# en: c5e9b2d1
outcome-no-change = Keine Änderung
# en: f6601074
outcome-changed = Jetzt ist es anders

## Photos, place, phone

# en: 354616d5
ask-photo = Bitte schicken Sie ein Foto: die Batterie mit beiden Kabelenden, von nahem.
# en: 1dc91935
ask-photo-battery = Bitte schicken Sie ein Foto: die Batterie mit beiden Kabelenden, von nahem.
# en: b32b6a88
ask-photo-fuse = Bitte schicken Sie ein Foto: die Sicherungen mit abgenommenem Deckel, von nahem.
# en: f398fb26
ask-photo-starter = Bitte schicken Sie ein Foto: den Anlasser mit seinen Kabeln, von nahem. Motor aus, Schlüssel abgezogen.
# en: b444aee6
ask-photo-fuel = Bitte schicken Sie ein Foto: den Kraftstofffilter oder das Schauglas, von nahem. Nichts öffnen.
# en: 9a96ba43
ask-photo-plug = Bitte schicken Sie ein Foto: die Zündkerze mit ihrem Kabel, so wie sie jetzt ist. Nichts abziehen.
# en: 395d1fab
ask-photo-controls = Bitte schicken Sie ein Foto: Hebel, Pedale und Schlüssel, so wie sie jetzt stehen.
# en: 35043a6f
ask-plate = Ein Foto vom Typenschild mit Typ und Seriennummer hilft uns, die richtigen Teile mitzubringen. Schicken Sie es hierher, oder schreiben Sie die Nummer.
# en: 15b93725
file-kept =
    { $count ->
        [one] Danke, das habe ich für die Werkstatt aufgehoben.
       *[other] Danke, { $count } Fotos und Dateien habe ich für die Werkstatt aufgehoben.
    }
# en: 44aebe5b
photo-dark = Das Foto ist zu dunkel, man sieht kaum etwas.
# en: c6f5c016
photo-blurred = Das Foto ist unscharf.
# en: 16098c85
photo-tiny = Das Foto ist sehr klein.
# en: 6a17f3f4
photo-if-you-can = Wenn es geht, noch eines: nah heran, ruhig halten, Licht im Rücken. Wenn nicht, machen Sie einfach weiter. Aufgehoben habe ich es.
# en: 8e904f5f
ask-story = Was war kurz davor? Was wurde daran gearbeitet, was haben Sie probiert, was haben Sie gefunden?
# en: a217f2a0
ask-story-how = Schreiben Sie es mit eigenen Worten, oder schicken Sie eine Sprachnachricht. Die Werkstatt bekommt sie auch.
# en: 9a87f346
ask-urgency = Wie eilig ist es?
# en: 82e8c323
urgency-high = Sehr: Tiere, Ernte oder Verkehr können nicht warten
# en: 8c515595
urgency-normal = In den nächsten Tagen
# en: 01e96389
urgency-low = Es hat Zeit
# en: ea7a8b4a
ask-where = Wo steht die Maschine? Schicken Sie den Standort, oder schreiben Sie ihn: Hof, Feld, Zufahrt.
# en: 20da302d
ask-where-phone = Wo steht die Maschine, und unter welcher Nummer erreichen wir Sie? Tippen Sie unten, oder schreiben Sie es: Hof, Feld, Tor, Nummer.
# en: 602b790e
share-place = Meinen Standort schicken
# en: fed99a6f
place-noted = Den Standort habe ich.
# en: 5bff8134
ask-phone = Unter welcher Nummer können wir Sie anrufen?
# en: c5a414f4
share-phone = Meine Nummer schicken
# en: ad213b1e
phone-noted = Ihre Nummer habe ich.
# en: ec5e8e02
contact-not-own = Das ist der Kontakt von jemand anderem. Bitte schicken Sie Ihre eigene Nummer, oder tippen Sie sie ein.
# en: 8c7bf85a
ask-equipment = Was haben Sie zur Hand? Kreuzen Sie alles an, was da ist.
# en: 7167d2d6
equipment-meter = Ein Voltmeter
# en: f9c514ae
equipment-leads = Starthilfekabel und eine gute Batterie
# en: d8206c8f
equipment-charger = Ein Ladegerät
# en: 2f0911de
equipment-second-person = Jemand, der hilft
# en: 21954101
equipment-hand-tools = Schraubenschlüssel oder Ratsche
# en: 23fb22e2
equipment-ticked = ✓ { $thing }
# en: dbd7e528
equipment-none = Nichts davon
# en: 9cbebea5
equipment-all = Das ist alles
# en: f5e40a5f
ask-trip =
    { $count ->
        [one] Bitte sehen Sie das nach, wenn Sie zur Maschine gehen:
       *[other] Ein Gang zur Maschine reicht. Bitte sehen Sie diese { $count } Dinge nach:
    }
# en: 58e17c88
ask-trip-how = Kommen Sie dann hierher zurück. Ich frage eins nach dem anderen.
# en: 6eab6010
trip-looked = Ich habe nachgesehen
# en: d66b5f07
trip-there = Ich stehe jetzt daneben
# en: 110956a3
trip-cannot = Ich komme nicht hin

## What stands under the drawings

# en: c4457161
drawing-battery-posts = 1 der Pol der Batterie · 2 die Klemme darauf · 3 das Kabel
# en: 65e5f163
drawing-earth-strap = 1 der Minuspol der Batterie · 2 wo sein Kabel am Rahmen sitzt · 3 das Masseband vom Rahmen zum Motor · 4 der Motor
# en: b2abde83
drawing-fuse-box = 1 der Deckel, abgezogen · 2 eine gute Sicherung, der Draht ist ganz · 3 eine durchgebrannte Sicherung, der Draht ist unterbrochen
# en: 362e4527
drawing-stop-knob = 1 Abstellzug gezogen: der Motor ist abgestellt · 2 Abstellzug hineingeschoben: der Motor kann laufen
# en: c2013a79
drawing-solenoid = 1 der Magnetschalter, die kleine Trommel · 2 der Anlasser darunter · 3 das dicke Kabel auf seinem Bolzen · 4 das dünne Kabel
# en: 60451d1c
drawing-place = Der Ring zeigt, wo es bei einer Maschine wie Ihrer meistens sitzt. Nur ansehen: Motor aus, Schlüssel abgezogen.

## The way out

# en: ab7cc81a
more-choose = Was wollen Sie tun?
# en: a70c2a54
more-back = Eine Frage zurück
# en: 5cf4340f
more-change = Eine Antwort ändern
# en: 8ed55df7
more-pause = Pause
# en: 68def0f5
more-person = Mit jemandem sprechen
# en: cdd3d8f4
more-runs = Sie läuft wieder
# en: 974decf8
more-stop = Schluss, ich brauche keine Hilfe
# en: 3ef7ad78
more-return = Weiter
# en: 64936b45
answer-go-on = Weiter
# en: 2c41b2dd
answer-person = Mit jemandem sprechen
# en: 81146f44
answer-open-again = Wieder aufmachen
# en: aefa6514
paused = Pause. Alles ist aufgehoben. Drücken Sie „Weiter“, oder schreiben Sie einfach, wenn Sie so weit sind.
# en: c0888db0
stopped = Beendet. Fall { $number } ist abgeschlossen. Wenn Sie uns doch brauchen, machen Sie ihn wieder auf.
# en: 5ffde8c1
person-told = Rufen Sie { $phone } an, oder bleiben Sie hier: Ich habe { $shop } gesagt, dass Sie mit jemandem sprechen wollen.
# en: 7f7ceab9
person-there = Bis { $time } ist jemand da.
# en: abffc440
person-away = Jetzt ist niemand da. Wieder jemand da: { $time }.
# en: 40eb2700
person-on-call = Wenn es nicht warten kann, rufen Sie jetzt { $phone } an.
# en: ee3c2311
person-nobody = Von der Werkstatt liest hier noch niemand mit. Bitte rufen Sie { $shop } an: { $phone }.
# en: 35229299
runs-again = Gut. Ich habe aufgeschrieben, dass sie wieder läuft. Woran es lag, wissen wir nicht; es kann also wiederkommen. Fall { $number } ist abgeschlossen.
# en: 037ac794
reminder = Sie haben länger nicht geantwortet. Das hier ist in Fall { $number } noch offen:
# en: 98f727a4
still-fine = Läuft die Maschine aus Fall { $number } noch gut?
# en: e03ce1f3
answer-still-fine = Ja, alles gut
# en: 9c150f52
answer-came-back = Nein, es ist wieder da
# en: bfe17655
still-fine-thanks = Danke. So wissen wir, was geholfen hat.
# en: 440477d8
came-back-told = Das tut mir leid. Fall { $number } ist wieder offen, und { $shop } weiß Bescheid.
# en: b760d75c
came-back-for-shop = Es ist wieder da: Fall { $number } ist wieder offen.
# en: 9d48181c
passed-on = Das habe ich an die Werkstatt weitergegeben.

## Danger

# en: 017de685
alarm-stop = Halt. Nicht starten.
# en: 83a947ed
alarm-emergency = Rufen Sie jetzt { $number } an.
# en: fc80f7be
alarm-after = Wenn niemand mehr in Gefahr ist, drücken Sie den Knopf, oder schreiben Sie es.
# en: 11f77456
alarm-again = Noch offen: Gefahr in Fall { $number }: { $flag }. Noch niemand hat „Gesehen“ gedrückt.
# en: 93a85b0a
alarm-unread = Von der Werkstatt hat das noch niemand gelesen. Wenn es nicht warten kann, rufen Sie { $phone } an.
# en: 553d72a3
alarm-read = Die Werkstatt hat das gelesen. Ihre Nummer ist { $phone }.
# en: 640926c4
answer-safe-now = Gefahr vorbei, weiter
# en: 2a474e65
alarm-for-shop = Gefahr in Fall { $number }: { $flag }. Bitte drücken Sie „Gesehen“, sobald Sie sich darum kümmern.
# en: 1daef233
operator-flag-seen = { $who } hat Ihre Nachricht über die Gefahr gelesen.

## What it may be

# en: 3ae1a9f5
what-it-may-be = Was es sein kann
# en: 2038e84f
chance-likely = { $cause }: wahrscheinlich, etwa { $chance }
# en: 85258084
chance-possible = { $cause }: möglich, etwa { $chance }
# en: 59f71576
chance-less-likely = { $cause }: weniger wahrscheinlich, etwa { $chance }
# en: f3e25bfd
may-be-else = Es kann gut etwas sein, das nicht auf meiner Liste steht.
# en: ea97ee8e
do-not-buy-yet = Noch nicht kaufen: { $part }. Erst wird das geprüft: { $check }.
# en: feabbe78
manual-first = Die Betriebsanleitung Ihrer Maschine geht vor. Wo Sie unsicher sind, lassen Sie es und überlassen es uns.
# en: 754d8e8a
what-next-told = Ihre Fallnummer ist { $number }. { $shop } hat jetzt alles und schreibt Ihnen hier. Telefon: { $phone }.
# en: 1277e2ae
what-next-nobody = Ihre Fallnummer ist { $number }. Von { $shop } liest hier noch niemand mit. Bitte rufen Sie { $phone } an, und nennen Sie diese Nummer.
# en: e5aee54d
press-summary = Zusammenfassung zum Weitergeben
# en: 26825b2f
summary-shop = Bei { $shop }, { $phone }
# en: 15fbd9f2
closed-thanks = Fall { $number } ist abgeschlossen. Schreiben Sie wieder, wenn eine Maschine nicht anspringt.
# en: af55a1ad
operator-assigned = Ihren Fall hat jetzt { $technician } von { $shop }.
# en: bc14b54b
solved-cause = Gut, sie läuft. Sehr wahrscheinlich war es das: { $cause }.
# en: 48af8006
solved-closed = Fall { $number } ist abgeschlossen. Wenn es wieder vorkommt, machen Sie ihn wieder auf, oder schreiben Sie einfach.
# en: 5c65aafd
solved-for-technician = Fall { $number } ist abgeschlossen: Der Kunde hat die Maschine selbst zum Laufen gebracht.
# en: 2283d13f
runs-for-now = Gut, sie läuft. Das kann den Fehler aber auch nur verdecken. Wahrscheinlich steckt dahinter: { $cause }.
# en: 2a087889
runs-for-now-unknown = Gut, sie läuft. Warum sie vorher nicht wollte, kann ich aber nicht sagen.
# en: 7683e7bb
runs-and-kept = Es kann sein, dass sie kein zweites Mal anspringt. Stellen Sie sie nur dort ab, wo sie stehen bleiben kann. { $shop } bleibt an dem Fall dran.
# en: 26862ec8
operator-closed = Fall { $number } ist abgeschlossen. Es war: { $cause }. Bitte sagen Sie uns, wenn es wiederkommt.

## Reasons

# en: 409cb251
reason-for = dafür: { $what }: { $state } (+{ $weight })
# en: a24d5a53
reason-against = dagegen: { $what }: { $state } (−{ $weight })
# en: 5ab71434
reason-for-together = dafür, zusammengenommen: { $what } (+{ $weight })
# en: 2b6775a6
reason-against-together = dagegen, zusammengenommen: { $what } (−{ $weight })
# en: 667dbdec
reason-member = { $name }: { $state }
# en: d2791df3
reason-not = nicht { $state }
# en: 40cf5982
reason-plain = Sie sagten: { $what }.
# en: cdbb97cc
would-change-mind = Das würde am meisten daran ändern: { $what }: { $state }.
# en: 6c40e9ad
look-alike = Noch nicht zu unterscheiden: { $causes }.
# en: ce7eae6e
look-alike-by = Noch nicht zu unterscheiden: { $causes }. Das unterscheidet sie: { $check }.

## The slip at the counter

# en: 06ba21ba
slip-title = { $number } · { $machine }, { $fuel }
# en: 3a505798
slip-who = Von: { $who }
# en: 7f1594cf
earlier-cases = Diese Maschine schon früher: { $list }
# en: ea454592
earlier-case = { $number } ({ $day })
# en: cd61261e
earlier-case-cause = { $number } ({ $day }: { $cause })
# en: d4b55ea0
nobody-named = Name nicht angegeben
# en: e37bfd04
slip-complaint = Beanstandung: { $what }
# en: 8ae2584f
symptom-unknown = noch nicht bekannt
# en: f287462d
slip-urgency = Dringlichkeit: { $urgency }
# en: c8969c9f
slip-urgency-reason = { $because } ({ $sign }{ $points })
# en: d187b229
slip-flag-unseen = { $flag } – hat noch niemand gesehen
# en: a7324d1e
slip-flag-seen = { $flag } – gesehen
# en: ba384faf
slip-person-wanted = Will mit jemandem sprechen
# en: 10a16a01
slip-phone = Telefon: { $phone }
# en: 6607359a
slip-place = Standort: { $place }
# en: ae39c9ca
slip-pin = Standort auf der Karte geschickt
# en: 13526d26
slip-files =
    { $count ->
        [one] Ein Foto oder eine Datei
       *[other] { $count } Fotos oder Dateien
    }
# en: 627771db
slip-causes = Wahrscheinliche Ursachen
# en: 3373504e
cause-line = { $cause }: { $chance }
# en: 4be5d1b7
slip-rest = Etwas anderes { $else } · inzwischen in Ordnung { $nothing }
# en: cc557984
slip-plan = Plan
# en: 4eecaa7d
plan-step = { $what } ({ $minutes })
# en: 03672f13
plan-call-help = Wenn nichts davon es zeigt: anrufen und nachfragen
# en: 0bb11bdb
plan-if = wenn { $result }: { $next }
# en: 5038fc03
plan-more =
    { $count ->
        [one] … und noch ein Schritt
       *[other] … und noch { $count } Schritte
    }
# en: d3e0bef7
plan-minutes = An der Maschine: etwa { $median }, in neun von zehn Fällen unter { $most }
# en: b5dc11cc
slip-kit = Einladen
# en: 29515e58
kit-part = { $part } – in { $chance } solcher Fälle gebraucht
# en: 5fcdba58
kit-part-own = { $part } · { $own }
# en: 256db2a3
part-own = unsere Nummer { $number }, auf Lager: { $stock }
# en: 80a5990b
part-own-shelf = unsere Nummer { $number }, auf Lager: { $stock }, Fach { $shelf }
# en: fd39946e
part-own-none = unsere Nummer { $number }, keins auf Lager
# en: 10ec2e7e
part-look-up-by = nach Seriennummer heraussuchen; muss passen bei: { $fit }
# en: eb01c38c
part-look-up = nach Seriennummer heraussuchen
# en: c1b9bf43
kit-tools = Werkzeug: { $tools }
# en: b9351183
kit-covers = Reicht in { $chance } solcher Fälle für die Reparatur
# en: 94544f81
slip-interview = Der Kunde antwortet noch
# en: d0deb6ab
slip-waiting = Wartet auf Entscheidung
# en: 5e128c2c
slip-assigned = Bei { $technician }
# en: 12bdb949
slip-set-out = { $technician } ist unterwegs
# en: 9a23d9c3
slip-on-site = { $technician } ist an der Maschine
# en: 44262614
slip-looked-after = { $who } kümmert sich darum
# en: 41e5a9b4
slip-called-off = Vom Kunden beendet
# en: 55b5ed6f
slip-ended = Abgeschlossen: { $how }
# en: 2ef168d0
slip-waited = Wartet seit { $since }
# en: 0a2e0187
slip-distance = Auf der Straße etwa { $km }, je Weg { $minutes }
# en: f31f0fa0
slip-pays = Zahlt: { $payer } – Anfahrt noch nicht vereinbart
# en: 69a64bc2
slip-pays-agreed = Zahlt: { $payer } – Anfahrt vereinbart
# en: 1146987e
slip-by-chat = Aussicht, dass es ohne Anfahrt geht: { $chance }
# en: b48c06f4
slip-asked = Kunde gefragt, noch keine Antwort: { $question }
# en: c29e71b6
slip-booked = Termin: { $from } bis { $until }
# en: f47bfd81
slip-second-visit = Zweite Anfahrt nötig. Mitbringen: { $what }
# en: a6658f25
slip-took-in = Fall { $other } ist derselbe Schaden
# en: 2e538349
payer-own = der Kunde
# en: e8ad6930
payer-warranty = Garantie
# en: 3488aaa1
payer-contract = Wartungsvertrag
# en: 04de072f
payer-comeback = niemand, Nacharbeit
# en: 149c200f
end-solved-by-chat = per Chat gelöst
# en: d7d41bf6
end-visit = vor Ort repariert
# en: a213e82e
end-collected = Maschine geholt oder gebracht
# en: 43a1e6c2
end-part-handed-over = Teil mitgegeben
# en: 3beab644
end-loan-machine = Leihmaschine gegeben
# en: 36d4d13d
end-referred = an jemand anderen verwiesen
# en: 64928c71
end-nothing-found = nichts gefunden
# en: 282dd98f
end-called-off = abgesagt
# en: 9ae8d799
end-duplicate = derselbe Schaden wie ein anderer Fall
# en: 4d3e18f3
press-acts = Mehr …
# en: d1ab4fc3
press-reopen = Fall wieder aufmachen
# en: 73df10fc
slip-closed = Abgeschlossen. Ursache: { $cause }
# en: 378f0ec4
press-seen = Gesehen
# en: 5d2c14aa
press-noticed = Ich kümmere mich
# en: 62d8d7fc
press-hand-over = Einem Monteur geben
# en: 535b93a2
press-take-back = Zurücknehmen
# en: 01d2d66d
press-files = Fotos und Dateien
# en: d6655641
which-technician = Wer übernimmt Fall { $number }?
# en: 5640e7d6
no-technicians = Es gibt noch keinen Monteur. Laden Sie einen ein: „einladen“.
# en: 6dac481b
handed-to = { $technician } hat den Fall bekommen
# en: 6d1d46cd
has-it-already = { $technician } hat ihn schon
# en: 3690f1d5
nobody-has-it = Den Fall hat niemand
# en: 7fc63c3e
no-longer-there = Diese Person gehört nicht mehr zur Werkstatt
# en: 9712cef7
seen-already = Schon gesehen
# en: baa724be
press-mark = Sagen, was es zeigt
# en: 26250e62
press-mark-else = Etwas anderes …
# en: e3bbed74
press-mark-danger = Eine Gefahr
# en: 4b1c4993
mark-what = Was zeigt das Foto?
# en: 00a7e874
mark-danger = Welche Gefahr zeigt es? Der Kunde erfährt sofort, was zu tun ist.
# en: 51e9f358
mark-how = { $what }: Wie ist es auf dem Foto?
# en: ad7f6833
marked = Bei Fall { $number } vermerkt, auf einem Foto gesehen: { $what }: { $state }.
# en: e01fc1d1
press-unmark = Das zurücknehmen
# en: 6f06899f
past-photo-marked = Foto angesehen
# en: 3a7f34b8
no-files = Keine Fotos oder Dateien da
# en: 342b79f9
technician-load =
    { $count ->
        [one] { $technician } – ein offener Auftrag
       *[other] { $technician } – { $count } offene Aufträge
    }
# en: 190c4d0f
technician-fit = { $technician } · { $skills }: { $fit }
# en: 62711000
has-it-now = { $technician } hat jetzt Fall { $number }
# en: 40bdbe75
done = Erledigt
# en: 426d5e16
is-open = Ist schon offen
# en: 3b186c14
acts-choose = Fall { $number }: Was nun?
# en: 21452b2d
press-ask = Den Kunden fragen
# en: 34bdb51b
press-ask-photo = Um ein Foto bitten
# en: 58f784c9
press-help = Dem Kunden etwas zum Probieren geben
# en: 857a5144
help-which = Was soll der Kunde aus Fall { $number } probieren? Er bekommt es Schritt für Schritt, mit allen Warnungen.
# en: 6f663489
help-none = Es ist nichts Ungefährliches mehr übrig, was der Kunde aus Fall { $number } probieren könnte.
# en: 379ecf2d
help-choice = Behebt es ({ $cures }): { $what }
# en: 63693399
help-choice-hides = Behebt es ({ $cures }), verdeckt nur ({ $masks }): { $what }
# en: 2bbe1866
help-choice-only-hides = Verdeckt nur ({ $masks }): { $what }
# en: 91db2b6d
help-over = Das wurde schon probiert
# en: c15855af
help-danger = In diesem Fall ist eine Gefahr offen. Die zuerst.
# en: 62b543c4
help-given = Dem Kunden vorgelegt
# en: e287db1d
help-aloud = Fall { $number } hat keinen Chat. Vorlesen und nachtragen, was dabei herauskam:
# en: 34cf6409
shop-suggests = { $who } von der Werkstatt schlägt vor, das zu probieren:
# en: 91b5c4de
past-help-given = etwas zum Probieren gegeben
# en: fe35f166
press-heard = Am Telefon Gesagtes nachtragen
# en: 0909a524
press-book = Termin machen
# en: 4b7335d3
press-unbook = Termin absagen
# en: 6caf8241
press-pay = Wer zahlt
# en: 923e41d2
press-pass = An die Kollegen in der Annahme geben
# en: d26be8a4
press-merge = Derselbe Schaden wie ein anderer Fall
# en: 0d2ff0c2
press-end = Fall abschließen
# en: 3232e457
press-history = Verlauf
# en: e60511c9
press-machine = Die Maschine: ansehen, berichtigen
# en: f29cea55
press-slip = Zettel zeigen
# en: 6184703c
press-leave = Lassen
# en: 5af9a117
prompt-ask = Schreiben Sie, was der Kunde aus Fall { $number } gefragt werden soll. Es wird weitergegeben; niemand sieht eine Nummer.
# en: 2daa0a18
prompt-heard = Schreiben Sie, was Sie zu Fall { $number } gehört haben. Was ich davon verstehe, zählt wie eine Antwort aus zweiter Hand.
# en: 65d9a3a7
left-it = So gelassen, wie es war.
# en: ae6cc290
call-how = Schreiben Sie hinter den Befehl, was Sie hören: /call Müller, Traktor an der Presse, klackt nur, Licht hell, untere Wiese
# en: 981617a5
phone-case = Fall { $number }, am Telefon
# en: 48a40ee5
phone-read = Vorlesen:
# en: 06af90e1
phone-options = { $options }
# en: 50cd3254
phone-answer = Schreiben Sie die Antworten in eine Zeile, in dieser Reihenfolge, mit Komma: ja, hell, weiß ich nicht.
# en: 2a6a7570
phone-nothing = Davon habe ich noch nichts verstanden; es ist aufgehoben.
# en: 09ffed81
phone-enough = Mehr zu fragen lohnt am Telefon nicht.
# en: 028ccd60
press-sticker = Aufkleber für diese Maschine drucken
# en: 00d8cf82
sticker-here = Drucken und auf die Maschine kleben. Wer ihn scannt, fängt hier an, und die Maschine ist schon bekannt.
# en: 11e19a5b
sticker-too-early = Noch ist nicht bekannt, was für eine Maschine es ist
# en: 5aa5c442
sticker-scan = Springt nicht an? Hier scannen.
# en: 95056b2b
sticker-shop = { $shop }, { $phone }
# en: 871e34a7
press-start-link = Link zu diesem Fall für den Kunden
# en: 4ca2a17f
start-link = Schicken Sie das dem Kunden aus Fall { $number }. Der Link gilt einmal; Fotos und Antworten kommen dann in den Fall:
# en: faeb576e
shop-asks = { $who } von der Werkstatt fragt:
# en: cdce18e5
shop-asks-photo = { $who } von der Werkstatt bittet um ein Foto. Schicken Sie es einfach hier.
# en: 68a33ba0
asked-operator = An den Kunden aus Fall { $number } weitergegeben.
# en: a652912d
operator-replied = Fall { $number }, Antwort auf: { $question }
# en: 3885e950
no-chat = Der Kunde aus Fall { $number } hat hier keinen Chat. Rufen Sie ihn an, und tragen Sie nach, was Sie hören.
# en: 35f107cb
book-when = Wann soll jemand zu Fall { $number } fahren?
# en: 13f02767
book-type = Oder schreiben Sie es: 9-11, oder 27.11. 14:30-16.
# en: 1acbc46a
book-window = { $from } bis { $until }
# en: 2dbbd2b1
book-not-understood = Daraus lese ich keine Zeit. Schreiben Sie es so: 9-11, oder 27.11. 14:30-16.
# en: 227c0ff6
book-past = Diese Zeit ist vorbei.
# en: 4facba5e
book-overlap = { $technician } ist bei Fall { $number }: { $from } bis { $until }.
# en: c8f30808
book-travel = Zu wenig Zeit für den Weg: { $technician } ist bei Fall { $number }: { $from } bis { $until }.
# en: 3aa92833
booked = Termin: { $from } bis { $until }
# en: 106e4933
not-booked = Kein Termin gemacht
# en: 64024480
visit-booked = Termin zu Fall { $number }: { $from } bis { $until }
# en: 07f27b73
visit-unbooked = Abgesagt: Termin zu Fall { $number }, { $from } bis { $until }
# en: feb5ede8
operator-on-the-way = { $technician } von { $shop } ist unterwegs zu Ihnen.
# en: 4927d1bb
told-operator = Der Kunde weiß Bescheid
# en: 2be286c6
operator-arrived = { $technician } von { $shop } ist jetzt an Ihrer Maschine.
# en: 88d9075f
operator-booked = { $shop } kommt: { $from } bis { $until }.
# en: 84ddd9e4
operator-unbooked = Der Termin { $from } bis { $until } ist abgesagt. Wir melden uns mit einem neuen.
# en: 601f3e4d
merge-which = Welcher Fall ist derselbe Schaden wie { $number }? Drücken Sie ihn, oder schreiben Sie seine Nummer.
# en: 79fc4956
merge-with = { $number } · { $machine } · { $who }
# en: 3df8c7d8
merge-unknown = Einen anderen offenen Fall { $number } gibt es nicht.
# en: a7224931
merge-sure = { $number } abschließen, weil es derselbe Schaden ist wie { $other }? Was gesagt wurde, kommt dort als Notiz hinein.
# en: 06091b3e
merge-yes = Ja, es ist derselbe
# en: 1895e225
operator-merged = Fall { $number } läuft als Fall { $other } weiter.
# en: 35069337
pay-which = Wer zahlt, und ist der Kunde mit der Anfahrt einverstanden?
# en: e621bedf
pay-agreed = { $payer } – einverstanden
# en: 220d4571
pay-open = { $payer } – noch nicht gefragt
# en: 1c0e9cd2
pass-which = Wer übernimmt ihn?
# en: b0b66c25
pass-nobody = Sonst ist niemand in der Annahme.
# en: de8b46a7
passed-to-you = Fall { $number } wurde an Sie weitergegeben.
# en: 817542b9
end-which = Wie ist es ausgegangen?
# en: 06b6d32d
technician-closed = Fall { $number } wurde von der Werkstatt abgeschlossen.
# en: ea7b207c
operator-ended = Fall { $number } ist abgeschlossen: { $how }. Schreiben Sie wieder, wenn Sie uns brauchen.
# en: 9475c291
operator-reopened = Fall { $number } ist wieder offen.
# en: b2dcb365
history-title = Verlauf von Fall { $number }
# en: 17e965aa
history-line = { $when }: { $what } ({ $who })
# en: 0d7dd10f
past-case-opened = angelegt
# en: 300d17ab
past-flag-raised = Gefahr gemeldet
# en: 88378c9d
past-flag-seen = Gefahr gesehen
# en: b27190cb
past-person-wanted = wollte mit jemandem sprechen
# en: 2c76b3f7
past-shop-saw = angenommen
# en: 3a61278e
past-case-assigned = einem Monteur gegeben
# en: 8c8f071f
past-case-taken-back = zurückgenommen
# en: 6095c47b
past-visit-set-out = unterwegs
# en: 8fde3304
past-visit-started = an der Maschine begonnen
# en: 79746dec
past-step-undone = einen Schritt zurückgenommen
# en: 68011a17
past-visit-cut-short = zweite Anfahrt nötig
# en: 4be1d47b
past-cause-confirmed = Ursache genannt
# en: b5d7dfbd
past-case-closed = abgeschlossen
# en: 0f975216
past-case-reopened = wieder aufgemacht
# en: ecdf9d65
past-operator-asked = Kunde gefragt
# en: ac0b94ab
past-operator-replied = Kunde hat geantwortet
# en: 7aed5380
past-visit-booked = Termin gemacht
# en: ba156646
past-visit-unbooked = Termin abgesagt
# en: db7cb15b
past-payment-told = wer zahlt
# en: 88fc6365
past-case-took-in = anderer Fall dazugenommen
# en: 432da86d
past-case-passed-on = weitergegeben
# en: 4e1697a6
past-operator-joined = Kunde ist in den Chat gekommen
# en: 84e688cb
case-is-closed = Dieser Fall ist abgeschlossen.
# en: fa562f6b
note-kept = Notiz bei Fall { $number } aufgehoben.

## The technician

# en: 773755fd
sheet-title = Fall { $number } · { $machine }
# en: 7bc7a081
sheet-note = Notiz: { $note }
# en: e397f30d
sheet-circuit = Startstromkreis
# en: 82a6d317
circuit-supply = Versorgung
# en: c59bdd58
circuit-control = Steuerung
# en: 075309f4
circuit-power = Hauptstrom
# en: 060daca4
sheet-told = Was bekannt ist
# en: 539e2244
sheet-record = Was gefunden und gemacht wurde
# en: b6a0ea4f
sheet-too-early = Noch ist nichts bekannt, was auf einem Arbeitszettel stehen könnte.
# en: aea33d5a
share-else = Etwas anderes
# en: 93f86d35
point-only = { $name }
# en: 900a8a34
point-readings-1 = { $name } – { $reading1 }
# en: b8c13bc8
point-readings-2 = { $name } – { $reading1 } – { $reading2 }
# en: 473ae35a
point-readings-3 = { $name } – { $reading1 } – { $reading2 } – { $reading3 }
# en: f53a41d0
point-cause = { $cause }: { $median }
# en: 34a3ed72
brief-for = dafür: { $what }
# en: 31835c6d
brief-against = dagegen: { $what }
# en: 7b879c3f
brief-for-same = dafür: dasselbe
# en: 9c36747b
brief-against-same = dagegen: dasselbe
# en: b613bd24
seen-on-photo = { $what } (auf einem Foto gesehen)
# en: 7ffada20
sheet-points = Was das Messgerät zeigen soll
# en: 26c58140
press-causes = Bild der Ursachen
# en: 6efa1b62
press-circuit = Stromkreis und Messwerte
# en: 36f4d984
share-only = { $chance }
# en: 4a28d49a
press-paper = Arbeitszettel zum Drucken
# en: 2f7d65fe
press-report = Arbeitsbericht zum Drucken
# en: 8a9e43de
press-set-out = Ich bin unterwegs
# en: da324e6d
press-begin = An der Maschine anfangen
# en: b60e5c29
technician-taken-back = Fall { $number } wurde von der Werkstatt zurückgenommen.
# en: be40d5dc
expected-healthy = In Ordnung: { $median } ({ $low } bis { $high })
# en: 50de3901
expected-cause = { $cause }: { $median } ({ $low } bis { $high })
# en: f0214227
step-left = vorerst gelassen
# en: cdf5d875
late-reading = { $text }: Welche Messung ist das?
# en: b696a226
step-tools = Werkzeug: { $tools }
# en: f36f30ec
cautions-as-before = wie vorhin – { $names }
# en: 7bb6bd3d
step-parts = Teile: { $parts }
# en: 2869049a
press-skip-step = Ging nicht, weiter
# en: 7c79b92c
press-found = Ursache gefunden
# en: eaf29753
press-undo = Letzten Schritt zurücknehmen
# en: d4ec27a3
press-sheet = Arbeitszettel zeigen
# en: d023566d
moved = { $cause }: { $before } → { $after }
# en: f9b07e93
plan-at-end = Der Plan hat keinen Schritt mehr. Nennen Sie die Ursache, oder rufen Sie an und fragen Sie nach.
# en: c171f40a
remedy-runs = Gemacht – läuft
# en: b6d02024
remedy-no-change = Gemacht – keine Änderung
# en: 8e8467a6
remedy-skip = Ging nicht
# en: 1717e8d1
which-cause = Was war die Ursache?
# en: b26c323e
cause-choice = { $cause } ({ $chance })
# en: 0c4492cb
cause-other = Etwas anderes
# en: f54f73fe
ask-cause = Was war die Ursache?
# en: 4782b8cc
ask-cause-words = Schreiben Sie kurz, was es war und was Sie gemacht haben.
# en: a3fecf2d
ask-ran = Ist sie gelaufen, und beim zweiten Mal wieder angesprungen?
# en: 8574613e
ran-yes = Ja, beides
# en: bbd9a77b
ran-not-yet = Noch nicht
# en: 91ba70ff
stays-open = Fall { $number } bleibt offen.
# en: fc32e5dc
press-short = Es fehlt etwas: zweite Anfahrt
# en: f8332b4a
ask-missing = Was fehlt für die zweite Anfahrt? Drücken Sie das Teil, oder schreiben Sie es.
# en: a6370eaa
second-visit = Fall { $number } bleibt für eine zweite Anfahrt offen. Mitbringen: { $what }
# en: 12473774
operator-second-visit = Die Reparatur ist noch nicht fertig: Wir müssen noch einmal kommen. Wir bringen mit: { $what }
# en: 6b9316fc
ask-hand-back = Bevor Sie sie zurückgeben: Bleibt der Anlasser still, wenn er still bleiben muss?
# en: 56bd43e0
hand-back-how = Halten Sie Abstand zur Maschine. Drehen Sie den Schlüssel kurz: mit eingelegtem Gang, dann mit eingeschalteter Zapfwelle, dann ohne jemanden auf dem Sitz. Der Anlasser muss jedes Mal still bleiben.
# en: 6cf48ae7
hand-back-interlocks = was das Starten mit eingelegtem Gang, mit eingeschalteter Zapfwelle und ohne Fahrer auf dem Sitz verhindern muss
# en: 69756639
hand-back-fine = Er bleibt jedes Mal still
# en: bf4cc3d7
hand-back-not-fine = Nein, er dreht
# en: a89bda85
hand-back-could-not = Konnte ich nicht prüfen
# en: 3ca0a122
hand-back-stop = Geben Sie die Maschine so nicht zurück: Sie kann unerwartet anspringen. Erst in Ordnung bringen, dann noch einmal prüfen.
# en: 1946bf5f
ask-hand-back-why = Warum konnte es nicht geprüft werden? Eine Zeile; der Kunde erfährt es.
# en: 8479e7bb
hand-back-untested = Nicht geprüft: { $what }. Grund: { $why }. Seien Sie vorsichtig, bis es geprüft ist.
# en: ba4e1b8e
operator-done = Gemacht wurde: { $what }.
# en: 6ab6564c
record-title = Zum Abschluss von Fall { $number }
# en: bd055acb
record-done = Gemacht: { $what }
# en: b04165c7
record-cause = Ursache: { $what } ({ $how })
# en: 3438a06f
record-minutes = An der Maschine: { $minutes }
# en: 93d9b119
record-minutes-choice = { $minutes }
# en: 7a753a8a
record-used = Verbraucht: { $parts }
# en: 32a34d4f
record-back = Zurückgebracht: { $parts }
# en: 43f420d8
record-correct = Drücken Sie, was noch nicht stimmt: Minuten, verbrauchte Teile, woher Sie die Ursache wissen.
# en: 30f5241b
record-photos = Fotos, die Sie heute noch schicken, kommen weiter zu diesem Fall.
# en: 881ece2d
file-kept-with = Bei Fall { $number } aufgehoben.
# en: bf670a94
how-ran-after-this = lief nach diesem einen Handgriff
# en: 5a4ddef4
how-measured = gemessen
# en: cdaad9d5
how-several-at-once = mehreres auf einmal
# en: 66ec4bbf
how-guess = vermutet
# en: f77e2ca3
ticked = ✓ { $label }
# en: ddab4520
unticked = { $label }
# en: 6f71f6dc
press-another-cause = Es gab noch eine Ursache
# en: e8529fb7
which-causes = Was war noch kaputt? Drücken Sie jede Ursache, die Sie gefunden haben.
# en: 0b4d3b5f
visit-closed = Fall { $number } ist abgeschlossen. Danke.

## People of the shop

# en: b13953fd
not-allowed = Dieser Knopf ist nicht für Sie.
# en: 00643cdf
nothing-done = Es wurde nichts geändert.
# en: acf290da
no-member = Sie gehören nicht mehr zu { $shop }, darum kam das zu keinem Fall dazu. Um eine eigene Maschine zu melden, schreiben Sie „/new“, oder rufen Sie { $phone } an.
# en: 740ff530
taken-out = Sie gehören nicht mehr zu { $shop }. Danke für alles. Um eine eigene Maschine zu melden, schreiben Sie einfach.
# en: f42e9afc
technician-gone = { $technician } ist nicht mehr in der Werkstatt: Fall { $number } wartet auf einen Monteur.
# en: 4e8cb5cc
welcome-member = Willkommen. Sie sind jetzt: { $role }.
# en: 56a26d7a
link-used-up = Dieser Link ist verbraucht oder zu alt. Bitten Sie um einen neuen, oder rufen Sie { $phone } an.
# en: cce970fc
role-owner = Chef
# en: b3b4cc8e
role-dispatcher = Annahme
# en: 7c5495e4
role-technician = Monteur
# en: fb4e6f2b
invite-which = Für wen ist der neue Link?
# en: a220bc80
invite-link = Link für: { $role }
# en: 4c064b41
invite-once = Er gilt einmal, sieben Tage lang. Schicken Sie ihn nur an den, für den er ist.
# en: 0f184a67
people-list = Leute der Werkstatt
# en: 390d7c55
people-one = { $name } – { $role }
# en: 8b32b7f5
list-calls =
    { $count ->
        [one] Eine offene Meldung
       *[other] { $count } offene Meldungen
    }
# en: 0a785205
list-jobs =
    { $count ->
        [one] Sie haben einen Auftrag
       *[other] Sie haben { $count } Aufträge
    }
# en: 92f99fb3
no-calls = Keine offenen Meldungen.
# en: a8b2bd8c
no-jobs = Sie haben gerade keine Aufträge.
# en: c048ce7c
no-find = In keinem Fall stehen diese Wörter.
# en: 402588a8
find-what = Schreiben Sie dazu, was Sie suchen: „/find Müller Presse“. Nummer, Name, Maschine, Ort oder ein Wort.
# en: 70c3b59c
list-find =
    { $count ->
        [one] Ein Fall gefunden
       *[other] { $count } Fälle gefunden
    }
# en: e228875d
list-new = ● { $label }
# en: 99d51c61
list-urgent = ! { $label }
# en: ebb4682d
list-closed = ✓ { $label }
# en: 0bd2a49c
press-next-page = Nächste Seite
# en: 8cdf4eda
member-what = Was soll sich für { $name } ändern?
# en: 6f9b3999
press-make-role = Ändern in: { $role }
# en: 2e363ce5
press-remove = { $name } aus der Werkstatt nehmen
# en: 7d6c67a4
remove-sure = { $name } aus der Werkstatt nehmen? Die offenen Fälle gehen zurück an die Annahme; zurück geht es nur mit einem neuen Link.
# en: a963c675
remove-yes = Ja, herausnehmen
# en: 15e9e81e
member-changed = Erledigt. Gilt ab sofort.
# en: 78484366
report-title = { $open } offen, { $closed } abgeschlossen
# en: da88f157
report-end = { $end }: { $count }
# en: 165c5c20
report-by-chat = Per Chat gelöst: { $share } von { $count } ({ $low } bis { $high })
# en: d519e7e2
report-by-chat-none = Per Chat gelöst: noch nichts abgeschlossen
# en: dfa64903
report-first-visit = Bei der ersten Anfahrt repariert: { $share } von { $count } ({ $low } bis { $high })
# en: 3811a364
report-first-visit-none = Bei der ersten Anfahrt repariert: noch keine Anfahrt abgeschlossen
# en: 5407f88b
report-second-trips = Anfahrten, die ohne Reparatur endeten: { $count }
# en: 4de8abd0
report-missing = Fehlte: { $part }: { $count }
# en: bde39069
report-minutes = Minuten an der Maschine: { $taken }, vorhergesagt { $foreseen } (Mediane aus { $count }); nicht länger als höchstens vorhergesagt: { $within }
# en: d5de0e33
report-comebacks = Wiedergekommen innerhalb von { $days } Tagen: { $count }
# en: 305a4e16
report-causes = Gefundene Ursachen
# en: ab6f3a43
report-cause = { $cause }, { $machine }: { $count }
# en: 52662b44
report-calibration = Stimmten die Prozente? Ausgänge: { $count }
# en: 5daf0054
report-bin = gesagt { $claimed }, so war es bei { $held } von { $count }
# en: 26aa1bec
press-table-cases = Fälle als Tabelle
# en: 1430e37f
press-table-rates = Gelerntes als Tabelle
# en: bf199230
list-case = { $number } · { $machine }
# en: ce5f0d02
list-case-alarm = Gefahr: { $number } · { $machine }
# en: 97781cce
stray-dispatcher = Um etwas an einem Fall zu tun, drücken Sie einen Knopf unter seinem Zettel: „Meldungen“ zeigt sie alle. Um eine eigene Maschine zu melden, schreiben Sie „/new“.
# en: 821a3b38
stray-technician = Sie haben keinen offenen Auftrag. „Aufträge“ zeigt sie. Um eine eigene Maschine zu melden, schreiben Sie „/new“.
# en: 0b54fc10
counter-here = Die Zettel neuer Fälle kommen von jetzt an in diese Gruppe.
# en: 1d595e10
group-refused = Über Fälle rede ich nur in der Gruppe der Werkstatt und im Einzelchat.

# en: a03e4645
hand-all-none = Sie haben keinen offenen Fall.
# en: 18db98ed
hand-all-who =
    { $count ->
        [one] Wer übernimmt den einen Fall, um den Sie sich kümmern?
       *[other] Wer übernimmt die { $count } Fälle, um die Sie sich kümmern?
    }
# en: bb1960a0
hand-all-yours =
    { $count ->
        [one] { $who } hat Ihnen einen Fall übergeben:
       *[other] { $who } hat Ihnen { $count } Fälle übergeben:
    }
# en: b8effa6f
hand-all-done =
    { $count ->
        [one] { $who } kümmert sich jetzt um Ihren einen Fall.
       *[other] { $who } kümmert sich jetzt um Ihre { $count } Fälle.
    }
# en: 5c447175
duty-now = { $who } hat Bereitschaft bis { $until }.
# en: 5218be6d
duty-nobody = Im Moment hat niemand Bereitschaft: Gefahren gehen an alle in der Annahme.
# en: fe36b623
duty-next = { $who }: { $from } bis { $until }
# en: 853a67b3
duty-what = Wer Bereitschaft hat, erfährt von Gefahren zu jeder Stunde, auch in der Ruhezeit.
# en: 17ee0018
duty-how-long = Wie lange soll { $who } Bereitschaft haben?
# en: c40a42be
duty-typed = Andere Zeiten, getippt: /duty { $who } 17:00-22:00 – /duty { $who } 27.11. 17:00 - 30.11. 07:00
# en: d992d874
duty-span = { $from } bis { $until }
# en: 89f99a33
duty-set = { $who } hat Bereitschaft: { $from } bis { $until }.
# en: 7df254d8
duty-yours = Sie haben Bereitschaft: { $from } bis { $until }. Von Gefahren erfahren Sie zu jeder Stunde.
# en: 0fd3fc0f
duty-ended = Ab jetzt hat niemand Bereitschaft.
# en: 9e5a7866
press-duty-nobody = Ab jetzt niemand

## Help and settings

# en: 934dcf3f
help-operator = { $name }: Sagen Sie mir, was Ihre Maschine macht, und ich finde heraus, was es sein kann. Sie können auch { $phone } anrufen.
# en: be16cdb5
help-technician = Sie sind Monteur bei { $name }. Ich gebe Ihnen die Fälle, die für Sie sind.
# en: 9ca8dfd2
help-dispatcher = Sie sind in der Annahme von { $name }. Neue Fälle kommen hier als Zettel an.
# en: c1429ea4
help-owner = Sie führen { $name }. Neue Fälle kommen hier als Zettel an.
# en: 54a32275
help-command = /{ $name } – { $what }
# en: af193041
command-new = eine Maschine melden, die nicht anspringt
# en: 610be8b1
command-person = mit jemandem sprechen
# en: 213d2725
command-help = was ich kann
# en: 0a6f87d8
command-language = Sprache wählen
# en: ed3292b6
command-forget = löschen, was über Sie aufgehoben ist
# en: ef891e4f
command-export = eine Kopie von allem, was über Sie aufgehoben ist
# en: 6d288a38
command-machines = Ihre Maschinen
# en: 726b2249
command-jobs = Ihre Aufträge
# en: 85a01a89
command-calls = offene Meldungen
# en: fa5e0d7b
command-call = einen Anruf aufnehmen: /call Müller, Traktor an der Presse, klackt nur
# en: 7ca6e245
command-find = einen Fall suchen
# en: 2b82dc86
command-handover = Ihre Fälle den Kollegen in der Annahme übergeben
# en: 50b3b169
command-duty = wer Bereitschaft hat
# en: d267705d
command-report = was bei den Fällen herauskommt
# en: d96eda83
command-invite = jemanden in die Werkstatt einladen
# en: 06c375e4
command-people = wer zur Werkstatt gehört
# en: 044d6aff
command-start = anfangen
# en: d1e4d436
language-which = Welche Sprache?
# en: 1bccca26
language-set = Ab jetzt in dieser Sprache.
# en: 269e1b4d
language-offer = Soll ich auf { $language } weitermachen?
# en: a518384b
language-offer-yes = Ja, auf { $language }
# en: 57b72cd1
language-offer-no = Nein, auf { $language }
# en: 2b9751ef
language-en = English
# en: 0eff62ce
language-es = Español
# en: 66749d36
language-de = Deutsch
# en: 4f00a7d6
forget-sure = Alles löschen, was über Sie aufgehoben ist?
# en: b9bd8725
forget-what = Name, Nummer, Standort, Nachrichten und Fotos werden gelöscht. Was über die Maschine herauskam, bleibt, ohne Ihren Namen.
# en: 13dc7bd6
forget-yes = Ja, löschen
# en: 325be0cd
forget-no = Nein, behalten
# en: c6e6047f
forgotten = Erledigt. Von Ihnen ist nichts mehr aufgehoben, außer diesem Chat auf Ihrem eigenen Telefon.
# en: 0330c6e2
apology = Hier ist etwas schiefgegangen. Was Sie geschickt haben, ist aufgehoben, und jemand sieht es sich an.
# en: 9c78d09e
export-here = Hier ist alles, was über Sie aufgehoben ist.
# en: 77502039
own-machines = Ihre Maschinen. Drücken Sie eine, um sie anzusehen oder zu ändern.
# en: 07586558
own-machines-none = Für Sie ist noch keine Maschine aufgehoben. Das kommt, sobald Sie eine gemeldet haben.
# en: 9b386632
own-machine-gone = Diese Maschine steht nicht mehr auf Ihrer Liste.
# en: f2f55bf5
own-machine-fuel = Läuft mit: { $fuel }
# en: 1215c438
own-machine-volts = Bordspannung: { $volts }
# en: 5a23fc75
own-machine-serial = Seriennummer: { $serial }
# en: c8ef1944
own-machine-cases = Fälle bisher: { $list }
# en: 428462d0
own-machine-name = Namen ändern
# en: 7107269a
own-machine-plate = Seriennummer eintragen
# en: cce4d15b
own-machine-kind = Es ist eine andere Maschinenart
# en: b2a39ef3
own-machine-other-fuel = Sie läuft mit: { $fuel }
# en: 6bc29eb4
own-machine-other-volts = Sie hat { $volts }
# en: bb10c474
own-machine-out = Von meiner Liste nehmen
# en: 27631beb
own-machine-write-name = Schreiben Sie, wie Sie diese Maschine nennen.
# en: e57e7003
own-machine-write-plate = Schreiben Sie die Seriennummer, wie sie auf dem Typenschild steht.

## Words that can be written in place of a command; several stand with commas between them.

# en: 71b73c93
word-new = neuer Fall, neue Maschine
# en: cba924ab
word-help = Hilfe
# en: c8c3744e
word-pause = Pause, warten, warte, später, gleich
# en: 28d7f0b7
word-change = ändern, Antwort ändern
# en: 40741b48
word-runs = läuft wieder, sie läuft wieder, er läuft wieder, springt wieder an, ist wieder angesprungen, läuft jetzt, jetzt läuft sie, jetzt läuft er
# en: 10936191
word-all-clear = alles gut, alles ist gut, alles in Ordnung, alles ok, alles okay, alles klar, alles sicher, alle sicher, alle sind sicher, alle in Sicherheit, ja alle, ja alles gut, ja alles in Ordnung, ja, uns geht es gut, mir geht es gut, es geht allen gut, wir sind sicher, ich bin sicher, keine Gefahr, es besteht keine Gefahr, passt alles, passt, nichts davon, nichts dergleichen, niemand verletzt, niemand ist verletzt, keiner verletzt, keiner ist verletzt, niemand, ok, okay, gut, alles gud, ois guad, alles jut, passt scho, passt schon
# en: 6fae7996
word-dont-know = weiß ich nicht, weiß nicht, weis nich, weiß ned, woaß ned, keine Ahnung, ka, kp, kein Plan, nicht sicher, kann ich nicht sagen, weiß nicht mehr
# en: 57b04080
word-skip = überspringen, weiter, kann nicht, kann ich nicht, geht nicht, geht grad nicht, nein, kein Foto, kein Bild, kein Telefon, jetzt nicht
# en: 489fa267
word-safe-now = Gefahr vorbei, die Gefahr ist vorbei, Gefahr ist vorbei, jetzt sicher, jetzt ist es sicher, es ist jetzt sicher, wieder sicher, alles wieder gut, ist vorbei, es ist vorbei, weiter
# en: f2761430
word-none-of-these = keine, keiner, keines, keine davon, keiner davon, keines davon, nichts von dem, nichts von alledem, ist nicht dabei, nicht dabei, nicht in der Liste
# en: ff3fb244
word-places = eins, zwei, drei, vier, fünf, sechs
# en: d7571a1d
word-language = Sprache
# en: fc9151d0
word-forget = vergessen, vergiss mich, löschen, alles löschen
# en: 0987c100
word-export = meine Daten, Datenkopie
# en: 331f93dd
word-machines = meine Maschinen
# en: 89790076
word-jobs = Aufträge, Jobs
# en: a6ca6a04
word-calls = Meldungen
# en: a14e4eff
word-call = Anruf
# en: fad7f290
word-find = suchen, suche
# en: 493d226d
word-report = Auswertung, Bericht
# en: fe35170f
word-duty = Bereitschaft
# en: f30dee1b
word-invite = einladen
# en: 180a5237
word-people = Leute
# en: e6c74280
word-handover = Übergabe, übergeben

## What the bot says of itself before anybody has written

# en: 64dfafd8
description = Eine Maschine springt nicht an? Schreiben Sie, was sie macht, oder schicken Sie ein Foto. Ich stelle ein paar kurze Fragen, finde heraus, was es sein kann, und sage der Werkstatt, was sie mitbringen soll.
# en: 310b0118
description-short = Sagt Ihnen und der Werkstatt, was einer Maschine fehlen kann, die nicht anspringt.
