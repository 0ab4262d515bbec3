# reviewed: nobody yet

### Die Wörter aus flows/: Fehler, Fragen, Antworten, Prüfungen, Teile.
### Anrede: Sie. Werkstattsprache, kurze Sätze.

## Fehler

# en: 70aef0ea
fault-air-filter-blocked = Luftfilter oder Ansaugung zu

# en: 90803306
fault-air-filter-blocked-explain = Ein dichter Filter, ein Nest oder ein vergessener Lappen gibt dem Motor zu wenig Luft zum Zünden.

# en: c49e69db
fault-exhaust-blocked = Auspuff zu

# en: 890d63c9
fault-exhaust-blocked-explain = Ein Nest, Dreck, Ruß oder ein eingefallener Auspufftopf hält die Abgase drin. Der Motor stirbt ab oder zündet nicht.

# en: 6b9b6ca4
fault-battery-flat = Batterie leer

# en: fe7ebe59
fault-battery-flat-explain = Die Batterie hat zu wenig Ladung, um den Motor zu drehen.

# en: cc89929f
fault-battery-sulphated = Batterie verbraucht

# en: e0ce996c
fault-battery-sulphated-explain = Die Batterie zeigt noch Spannung, hat aber keine Kraft mehr. Sobald der Anlasser zieht, bricht sie ein.

# en: 825643b3
fault-battery-shorted-cell = Batterie mit toter Zelle

# en: fbe59397
fault-battery-shorted-cell-explain = Eine Zelle hat Kurzschluss. Zwei Volt fehlen, und die Batterie wird nie voll.

# en: eb8a87c0
fault-battery-dead = Batterie ganz tot

# en: d0acef94
fault-battery-dead-explain = Es ist kaum noch Spannung da. Oft ist die Batterie kaputt, weil sie leer gestanden hat.

# en: 0d8d13f1
fault-battery-broken-link = Unterbrechung in der Batterie

# en: 89ea32e7
fault-battery-broken-link-explain = Innen ist eine Brücke oder ein Pol gebrochen. Die Spannung sieht gut aus, bis Strom gezogen wird.

# en: 6798100a
fault-plus-clamp-corroded = Plusklemme oxidiert oder lose

# en: fed94ee5
fault-plus-clamp-corroded-explain = Die Verbindung am Pluspol lässt zu wenig Strom durch.

# en: 729f8e43
fault-earth-strap-corroded = Massekabel oder sein anderes Ende oxidiert

# en: 2eb95ecb
fault-earth-strap-corroded-explain = Der Rückweg vom Motor zum Minuspol lässt zu wenig Strom durch.

# en: fe4660f1
fault-battery-lead-off = Ein Batteriekabel ist ab

# en: 71d62bf9
fault-battery-lead-off-explain = Eines der beiden Batteriekabel hat gar keinen Kontakt.

# en: c1230c7d
fault-earth-strap-broken = Massekabel unterbrochen

# en: f6d63a69
fault-earth-strap-broken-explain = Der Motor hat keinen Rückweg mehr zum Minuspol.

# en: 98f511c8
fault-frame-earth-bad = Kleine Masse der Elektrik schlecht

# en: fe9091ea
fault-frame-earth-bad-explain = Armaturen und Schalter haben ihre eigene kleine Masse verloren. Darum geht an ihnen nichts.

# en: dadf0d89
fault-plus-cable-bad = Pluskabel oder sein anderes Ende schlecht

# en: 493b4f84
fault-plus-cable-bad-explain = Das dicke Pluskabel oder sein Ende am Magnetschalter lässt zu wenig Strom durch.

# en: 33a072a4
fault-plus-cable-touches-metal = Pluskabel oder Kabelschuh berührt Metall

# en: 31f4a166
fault-plus-cable-touches-metal-explain = Das dicke Pluskabel oder der Kabelschuh an seinem Ende berührt Motor oder Rahmen und schließt die Batterie kurz.

# en: 5d343556
fault-starter-cable-bad = Kabel vom Schütz zum Anlasser schlecht

# en: 8fb46ba4
fault-starter-cable-bad-explain = Das Kabel zwischen Schütz und Anlasser lässt zu wenig Strom durch.

# en: 11fd140d
fault-carburettor-blocked = Vergaserdüse zu oder Schwimmer hängt

# en: c6f74b69
fault-carburettor-blocked-explain = Harz oder Dreck lässt kein Benzin aus dem Vergaser. Er zündet mit dem, was er bekommt, und stirbt ab.

# en: e88207cf
fault-intake-air-leak = Falschluft zwischen Vergaser und Motor

# en: 0f226928
fault-intake-air-leak-explain = Luft kommt am Vergaser vorbei hinein. Das Gemisch ist zu mager zum Zünden.

# en: af4f2eff
fault-charging-failed = Batterie wird nicht geladen

# en: 24688edf
fault-charging-failed-explain = Der Motor lädt die Batterie nicht nach. Sie wird bei der Arbeit leer.

# en: fc4cb8ec
fault-belt-slack = Keilriemen der Lichtmaschine schlapp, gerissen oder ab

# en: 55875d96
fault-belt-slack-explain = Der Riemen treibt die Lichtmaschine nicht mehr an. Die Batterie wird nicht geladen.

# en: 04f4740f
fault-overcharge = Batterie wird überladen

# en: 0f277195
fault-overcharge-explain = Der Regler lässt zu viel Spannung durch und kocht die Batterie aus.

# en: 20a9dd50
fault-choke-wrong = Choke oder Gashebel steht falsch zum Starten

# en: 62d21d69
fault-choke-wrong-explain = Ohne Choke bekommt ein kalter Motor zu wenig Benzin, mit Choke ein warmer zu viel.

# en: bf9b8d5e
fault-choke-stuck = Choke- oder Gaszug kaputt oder fest

# en: 67562926
fault-choke-stuck-explain = Der Hebel geht, aber die Klappe im Vergaser geht nicht mit.

# en: 23d763bf
fault-minus-clamp-corroded = Minusklemme oxidiert oder lose

# en: 97e5d753
fault-minus-clamp-corroded-explain = Die Verbindung am Minuspol lässt zu wenig Strom durch.

# en: 407421ac
fault-valve-leaks = Ventil hängt, verbrannt oder Ventilspiel falsch

# en: fd2ad1fd
fault-valve-leaks-explain = Ein Ventil, das nicht schließt, lässt den Druck aus dem Zylinder.

# en: 38068eb9
fault-head-gasket-blown = Zylinderkopfdichtung durch

# en: 36bc5621
fault-head-gasket-blown-explain = Zwischen Block und Kopf geht der Druck weg: ins Kühlwasser, ins Öl, in den Nachbarzylinder oder nach außen.

# en: 20eb58b8
fault-rings-worn = Kolbenringe oder Zylinder verschlissen

# en: 1c7acecd
fault-rings-worn-explain = Verschlissene Ringe lassen den Druck am Kolben vorbei. Kalt zündet der Motor dann nicht.

# en: f704ea9a
fault-timing-slipped = Steuerzeiten oder Pumpe verstellt

# en: c7084c31
fault-timing-slipped-explain = Ein Riemen, eine Kette, ein Rad oder der Antrieb der Pumpe ist übergesprungen oder falsch eingestellt. Alles kommt zum falschen Zeitpunkt.

# en: 8f12ca7f
fault-pto-switch-failed = Zapfwellenschalter oder sein Gestänge kaputt

# en: b1dfc63a
fault-pto-switch-failed-explain = Der Zapfwellenschalter meldet nicht, dass die Zapfwelle aus ist. Der Startstromkreis bleibt offen.

# en: c8275465
fault-pto-left-engaged = Zapfwelle oder Mähwerk noch eingeschaltet

# en: 17f4d2ad
fault-pto-left-engaged-explain = Der Hebel für Zapfwelle oder Mähwerk ist nicht ganz aus. Die Startsperre hält den Anlasser zu Recht zurück.

# en: daae4834
fault-gear-left-engaged = Gang- oder Fahrhebel nicht im Leerlauf

# en: b974a022
fault-gear-left-engaged-explain = Ein Gang- oder Fahrhebel ist nicht im Leerlauf. Die Startsperre hält den Anlasser zu Recht zurück.

# en: 03cc3572
fault-seat-empty = Niemand oder zu wenig Gewicht auf dem Sitz

# en: dbdfc095
fault-seat-empty-explain = Der Sitzschalter spürt niemanden. Die Startsperre hält den Anlasser zu Recht zurück.

# en: f97b2d2f
fault-clutch-not-pressed = Kupplung nicht ganz getreten

# en: 3a61f4f9
fault-clutch-not-pressed-explain = Das Kupplungspedal ist nicht ganz durchgetreten. Die Startsperre hält den Anlasser zu Recht zurück.

# en: 0c3aa333
fault-brake-not-pressed = Bremse nicht ganz getreten

# en: 9191a0de
fault-brake-not-pressed-explain = Das Bremspedal ist nicht ganz durchgetreten. Die Startsperre hält den Anlasser zu Recht zurück.

# en: 614cd65a
fault-stop-button-pressed = Not-Aus noch gedrückt

# en: 4450f0d7
fault-stop-button-pressed-explain = Ein Not-Aus-Knopf ist noch eingedrückt. Darum darf nichts starten.

# en: f0e75f7b
fault-bar-not-down = Sicherheitsbügel nicht ganz unten

# en: 9be48fd1
fault-bar-not-down-explain = Der Sicherheitsbügel ist nicht ganz unten. Die Startsperre hält den Anlasser zu Recht zurück.

# en: 5f905f0c
fault-operator-lever-released = Haltebügel nicht gehalten

# en: 9598ef45
fault-operator-lever-released-explain = Der Bügel am Holm wird nicht gehalten. Darum nimmt die Motorbremse den Zündfunken weg.

# en: f678d954
fault-isolator-left-off = Batterietrennschalter noch aus

# en: 99b2fad8
fault-isolator-left-off-explain = Der Batterietrennschalter ist aus. Die Maschine hat keinen Strom.

# en: 6464bb04
fault-decompressor-failed = Automatischer Dekompressor kaputt

# en: 1dc00dbf
fault-decompressor-failed-explain = Der Motor bleibt am ersten Kompressionstakt stehen, weil der Druck nicht abgelassen wird.

# en: 37b1f284
fault-valve-gap-wide = Ventilspiel zu groß, Dekompressor wirkt nicht

# en: b6721bdd
fault-valve-gap-wide-explain = Bei zu großem Spiel hebt der Dekompressor das Ventil nicht mehr. Der Motor bleibt an der Kompression stehen.

# en: bec8047a
fault-diesel-waxed = Diesel in der Kälte ausgeflockt

# en: cd96cd04
fault-diesel-waxed-explain = Bei Frost verstopft das Paraffin aus dem Sommerdiesel Filter und Leitungen.

# en: 7381089e
fault-diesel-ice = Wasser im Diesel gefroren

# en: 036a3862
fault-diesel-ice-explain = Wasser am Tankauslauf, in der Leitung oder im Wasserabscheider ist gefroren und hält den Diesel auf.

# en: c34e444c
fault-diesel-air = Luft im Diesel

# en: 087dfb7c
fault-diesel-air-explain = Mit Luft in den Leitungen baut die Einspritzpumpe keinen Druck auf.

# en: 28f2c397
fault-diesel-water = Wasser oder Schlamm im Diesel

# en: b643a39a
fault-diesel-water-explain = Wasser oder Dieselpest sitzt in Filter und Tank und kommt bis zur Pumpe.

# en: 7dc9514e
fault-diesel-filter-blocked = Dieselfilter, Sieb oder Leitung zu

# en: 7b10b4f7
fault-diesel-filter-blocked-explain = Durch Filter, Tanksieb oder eine Leitung kommt zu wenig Diesel.

# en: abe386c2
fault-lift-pump-weak = Förderpumpe fördert nicht

# en: 0da16144
fault-lift-pump-weak-explain = Die Pumpe, die den Diesel aus dem Tank holt, bringt zu wenig.

# en: bbc6dbf6
fault-immobiliser-lock = Gesperrt durch Wegfahrsperre, PIN oder aus der Ferne

# en: 91e7f59f
fault-immobiliser-lock-explain = Die Maschine erkennt den Schlüssel nicht, will ihre PIN oder wurde aus der Ferne gesperrt.

# en: a168601e
fault-exhaust-fluid-lock = Gesperrt wegen Harnstoff oder Partikelfilter

# en: ec980119
fault-exhaust-fluid-lock-explain = Das Steuergerät verbietet den Start: Harnstofflösung fehlt, ist schlecht, oder die Anlage dafür hat einen Fehler.

# en: c08095a2
fault-controller-no-supply = Steuergerät bekommt keinen Strom

# en: 66bab1ea
fault-controller-no-supply-explain = Sicherung, Relais, Masse oder Stecker des Motorsteuergeräts ist schlecht. Nichts sagt dem Motor, dass er laufen soll.

# en: b8168582
fault-controller-refuses = Steuergerät sperrt wegen Schalter oder Sensor

# en: b4576273
fault-controller-refuses-explain = Ein Schalter, ein Sensor oder sein Stecker meldet dem Steuergerät etwas Falsches. Es lässt den Anlasser nicht laufen.

# en: e507f1f2
fault-controller-damaged = Steuergerät kaputt

# en: 537c2e34
fault-controller-damaged-explain = Schweißen, falsche Starthilfe oder Wasser hat das Motorsteuergerät zerstört.

# en: e7937eb5
fault-engine-seized = Motor fest

# en: 80a16149
fault-engine-seized-explain = Der Motor selbst sitzt fest. Der Anlasser kann ihn nicht drehen.

# en: 2f721635
fault-hydrolock = Flüssigkeit in einem Zylinder

# en: 74ec6070
fault-hydrolock-explain = Öl, Benzin oder Wasser füllt einen Zylinder und hält den Kolben auf. Nicht mit Gewalt drehen.

# en: 6981689d
fault-thick-oil = Öl zu dick für die Kälte

# en: 68e6ba67
fault-thick-oil-explain = Kaltes, dickes Öl bremst den Motor stärker, als der Anlasser drehen kann.

# en: e05ca317
fault-load-left-engaged = Etwas wird mit dem Motor mitgedreht

# en: e8aa0214
fault-load-left-engaged-explain = Eine Pumpe, ein Anbaugerät oder ein Antrieb ist nicht abgeschaltet und muss mitgedreht werden.

# en: 428769f5
fault-pto-clutch-stuck = Zapfwellen- oder Mähwerkskupplung trennt nicht

# en: 6c28d279
fault-pto-clutch-stuck-explain = Obwohl sie ausgeschaltet ist, schleppt die Kupplung Messer oder Zapfwelle mit. Beides zusammen schafft der Anlasser nicht.

# en: 2d7a9c7a
fault-accessory-seized = Lichtmaschine, Wasserpumpe oder Kompressor fest

# en: bcb6251d
fault-accessory-seized-explain = Etwas am Riemen sitzt fest und hält den Motor. Der Riemen rutscht, raucht oder bremst ihn ganz.

# en: 10ed77be
fault-hydraulic-drag = Hydrauliköl in der Kälte zu zäh

# en: 1d38295e
fault-hydraulic-drag-explain = Die Hydraulikpumpe dreht mit, und bei Frost ist ihr Öl so zäh, dass der Anlasser beides nicht schafft.

# en: 4d5c8bbc
fault-carburettor-overflows = Vergaser läuft über (Schwimmer oder Nadel)

# en: 8fd6c2f1
fault-carburettor-overflows-explain = Ein löchriger Schwimmer oder eine undichte Nadel lässt Benzin bis in den Motor laufen.

# en: d6b5b57c
fault-flooded = Motor abgesoffen durch zu viel Choke oder Orgeln

# en: eb0c03f1
fault-flooded-explain = Zu viel Benzin im Zylinder hat die Kerze nass gemacht.

# en: 1418fe1b
fault-tank-empty = Tank leer

# en: 14667855
fault-tank-empty-explain = Es ist kein Kraftstoff mehr da, den der Motor ansaugen könnte.

# en: a6ebe166
fault-tank-leaks = Tank oder Schlauch undicht, Tank leergelaufen

# en: 57a6cb8b
fault-tank-leaks-explain = Der Kraftstoff ist durch ein Leck an Tank, Hahn oder Schlauch ausgelaufen. Nachfüllen allein hilft nicht.

# en: ba080a08
fault-fuel-tap-shut = Kraftstoffhahn zu

# en: a2d7fb98
fault-fuel-tap-shut-explain = Der Kraftstoffhahn ist zu oder nur halb offen. Es läuft nichts.

# en: ec158d6a
fault-tank-vent-blocked = Tankbelüftung zu

# en: 6760dac6
fault-tank-vent-blocked-explain = In den Tank kommt keine Luft nach. Der Unterdruck hält den Kraftstoff zurück.

# en: 26ce8cc9
fault-wrong-fuel = Falsches im Tank

# en: c1e4cf2f
fault-wrong-fuel-explain = Diesel im Benzin, Benzin im Diesel, Wasser oder Harnstofflösung im Tank. Der Motor darf nicht durchgedreht werden.

# en: 83b3ea65
fault-fuel-valve-dead = Abschaltventil am Vergaser hängt oder durchgebrannt

# en: 72e709e7
fault-fuel-valve-dead-explain = Das Ventil, das bei eingeschalteter Zündung die Düse öffnet, geht nicht auf.

# en: 44df9b18
fault-fuel-valve-no-current = Kein Strom am Abschaltventil des Vergasers

# en: 8f519905
fault-fuel-valve-no-current-explain = Kabel, Stecker, Sicherung oder Schalter versorgt das Ventil nicht mehr, das die Düse öffnet.

# en: 3f0c646b
fault-fuse-blown = Hauptsicherung durchgebrannt

# en: f9ea2885
fault-fuse-blown-explain = Die Hauptsicherung ist durch. Zündschloss und Schalter haben keinen Strom. Irgendetwas hat sie durchgebrannt.

# en: 968253ac
fault-wire-shorted = Kabel durchgescheuert, die Sicherung fliegt wieder

# en: 99de7ba2
fault-wire-shorted-explain = Ein blankes Kabel hinter der Sicherung berührt Metall. Darum fliegt auch jede neue Sicherung.

# en: be6af7cb
fault-fuse-holder-corroded = Sicherungshalter oxidiert oder verstaubt

# en: 862facc3
fault-fuse-holder-corroded-explain = Die Sicherung ist ganz, aber ihre Kontakte sind schmutzig oder verbrannt und verlieren den Strom.

# en: f0bf2bb8
fault-gas-empty = Gas verbraucht

# en: 97fa4176
fault-gas-empty-explain = Die Flasche oder der Tank ist leer.

# en: 8d536cca
fault-gas-valve-shut = Gasventil zu

# en: e6486959
fault-gas-valve-shut-explain = Die Flasche oder ein Hahn ist zu, oder die Schlauchbruchsicherung der Flasche hat geschlossen.

# en: c79de904
fault-gas-regulator-failed = Gasregler vereist oder kaputt

# en: b823b841
fault-gas-regulator-failed-explain = Der Regler gibt zu wenig Gas: Er ist vereist, verölt, oder seine Membran ist gerissen.

# en: 74619050
fault-gas-lock-shut = Gas-Absperrventil geht nicht auf

# en: caf71ac7
fault-gas-lock-shut-explain = Das elektrische oder Unterdruckventil, das das Gas durchlässt, bleibt zu.

# en: 7bd0ba99
fault-points-burnt = Unterbrecherkontakte verbrannt, belegt oder zu eng

# en: 1dd86525
fault-points-burnt-explain = Die Kontakte öffnen nicht mehr sauber oder leiten schlecht. Der Funke ist schwach oder fehlt.

# en: 4e67c8e9
fault-distributor-fault = Verteilerkappe oder Verteilerfinger

# en: 3f5c7a55
fault-distributor-fault-explain = Der Funke geht im Verteiler verloren, zwischen Spule und Kerzenkabeln.

# en: 7398fac4
fault-magneto-weak = Magnetzünder schwach oder Schnapper hängt

# en: 30c70850
fault-magneto-weak-explain = Bei Anlassdrehzahl gibt der Magnetzünder zu wenig Funken, oder der Schnapper schnappt nicht mehr.

# en: 9afb87b7
fault-coil-failed = Zündspule oder Zündmodul kaputt

# en: 0a9d6a8a
fault-coil-failed-explain = Die Spule oder ihr Modul macht keinen Funken.

# en: 8f0fb082
fault-kill-wire-earthed = Abstellkabel liegt an Masse

# en: eeedd843
fault-kill-wire-earthed-explain = Das Kabel, das den Motor abstellt, liegt an Masse, oder das Zündschloss hält es dort. Die Spule kann nicht zünden.

# en: 8239da7e
fault-run-interlock-kills = Ein Sicherheitsschalter nimmt den Funken weg

# en: 8d341527
fault-run-interlock-kills-explain = Der Sitz-, Mähwerk- oder Bremsschalter meldet der Zündung, dass niemand da ist. Sie stellt den Motor ab.

# en: 94875171
fault-lever-switch-kills = Seilzug oder Stoppschalter des Haltebügels

# en: c12b2212
fault-lever-switch-kills-explain = Der Bügel wird gehalten, doch sein Seilzug oder der Stoppschalter am Motor nimmt den Funken trotzdem weg.

# en: fd9226d7
fault-engine-switch-off = Schalter am Motor selbst steht auf AUS

# en: fb5d8daf
fault-engine-switch-off-explain = Ein Schalter am Motor oder am Holm steht noch auf AUS. Darum kein Funke.

# en: 705e2c41
fault-coil-no-feed = Die Spule bekommt keinen Strom

# en: 4042fa4c
fault-coil-no-feed-explain = Zündschloss, Kabel, Vorwiderstand oder Sicherung versorgt die Zündspule nicht mehr.

# en: 0a879c6a
fault-flywheel-key-sheared = Keil im Schwungrad abgeschert

# en: 4e5240fb
fault-flywheel-key-sheared-explain = Nach einem Schlag hat sich das Schwungrad auf der Kurbelwelle verdreht. Der Funke kommt zum falschen Zeitpunkt.

# en: b4b85e69
fault-leads-crossed = Kerzenkabel vertauscht oder Zündung falsch eingestellt

# en: 8fdd4a60
fault-leads-crossed-explain = Nach Arbeiten daran kommen die Funken in falscher Reihenfolge oder zum falschen Zeitpunkt.

# en: 14159d93
fault-plug-fouled = Zündkerze verrußt oder verbraucht

# en: c608850c
fault-plug-fouled-explain = Die Kerze gibt unter Druck keinen Funken mehr, der stark genug ist.

# en: bead7f36
fault-plug-lead-off = Kerzenkabel ab, lose oder rissig

# en: d21414ea
fault-plug-lead-off-explain = Das Kabel sitzt nicht auf der Kerze, oder der Funke schlägt daneben über.

# en: a3eb4889
fault-coil-fails-hot = Zündspule fällt heiß aus

# en: eed48e61
fault-coil-fails-hot-explain = Ist sie heiß, macht die Spule keinen Funken. Kalt geht sie wieder.

# en: 95849a15
fault-injection-pump-failed = Einspritzpumpe verschlissen oder kaputt

# en: b940e87b
fault-injection-pump-failed-explain = Der Diesel kommt bis zur Einspritzpumpe, aber sie drückt ihn nicht weiter zu den Düsen.

# en: f7f7ea3c
fault-injectors-worn = Einspritzdüsen verschlissen oder fest

# en: df706d64
fault-injectors-worn-explain = Die Düsen tropfen oder spritzen schlecht. Der Diesel zündet nicht.

# en: c7488963
fault-injector-seats-leak = An den Düsen kommt Gas in den Kraftstoff

# en: 45e2ffd3
fault-injector-seats-leak-explain = Brenngas bläst an verschlissenen Düsensitzen vorbei in den Rücklauf und macht den Kraftstoff voller Blasen.

# en: e28c1382
fault-rail-pressure-missing = Raildruck baut sich nicht auf

# en: cde5d431
fault-rail-pressure-missing-explain = Hochdruckpumpe, Regelventil, Drucksensor oder eine undichte Düse hält den Raildruck zu niedrig zum Einspritzen.

# en: cd9a8886
fault-speed-sensor-failed = Drehzahlsensor an Kurbel- oder Nockenwelle

# en: 2b4190ad
fault-speed-sensor-failed-explain = Ohne Drehzahlsignal spritzt das Steuergerät nicht ein.

# en: 5dc79c14
fault-neutral-switch-failed = Leerlaufschalter oder sein Gestänge kaputt

# en: ed432067
fault-neutral-switch-failed-explain = Der Leerlaufschalter meldet den Leerlauf nicht. Der Startstromkreis bleibt offen.

# en: bda0771f
fault-seat-switch-failed = Sitzschalter oder sein Gestänge kaputt

# en: 6860e96f
fault-seat-switch-failed-explain = Der Sitzschalter meldet nicht, dass jemand sitzt. Der Startstromkreis bleibt offen.

# en: 3024d001
fault-clutch-switch-failed = Kupplungsschalter oder sein Gestänge kaputt

# en: 71ba963a
fault-clutch-switch-failed-explain = Der Kupplungsschalter meldet das Pedal nicht. Der Startstromkreis bleibt offen.

# en: 6114a607
fault-brake-switch-failed = Bremsschalter oder sein Gestänge kaputt

# en: db9852ec
fault-brake-switch-failed-explain = Der Bremsschalter meldet das Pedal nicht. Der Startstromkreis bleibt offen.

# en: 08e3ef77
fault-interlock-wire-off = Stecker oder Kabel eines Sicherheitsschalters ab

# en: 99ae3c63
fault-interlock-wire-off-explain = Der Stecker eines Sicherheitsschalters ist ab, oder sein Kabel ist angefressen oder abgerissen. Der Startstromkreis bleibt offen.

# en: 69be91d9
fault-interlock-mud = Dreck oder Gras hält einen Schalter oder ein Pedal

# en: 695f8cf0
fault-interlock-mud-explain = Festsitzender Dreck oder Gras lässt ein Pedal, einen Hebel oder seinen Schalter nicht in die Startstellung.

# en: e350e7ac
fault-key-run-contact = Zündschloss: Kontakt EIN schlecht, geht beim Loslassen aus

# en: 9cab58eb
fault-key-run-contact-explain = In Stellung EIN versorgt das Zündschloss Zündung, Kraftstoffventil oder Abstellmagnet nicht mehr. Der Motor geht aus, sobald der Schlüssel zurückspringt.

# en: a6d432e0
fault-key-switch-supply = Zündschloss gibt gar keinen Strom

# en: f48eb4ed
fault-key-switch-supply-explain = Das Zündschloss bekommt Strom, gibt ihn aber in keiner Stellung weiter.

# en: dd79c6ca
fault-key-plug-burnt = Stecker oder Kabel am Zündschloss verbrannt oder lose

# en: 6ff17a59
fault-key-plug-burnt-explain = Der Stecker hinter dem Zündschloss ist verbrannt, grün oder lose. Das Schloss bekommt zu wenig Strom oder gibt zu wenig weiter.

# en: b39d5fd0
fault-key-switch-start-contact = Zündschloss: Kontakt START schlecht

# en: 4527c3ac
fault-key-switch-start-contact-explain = In Stellung START gibt das Zündschloss keinen Strom in den Startstromkreis.

# en: 5387795d
fault-key-stuck-on-start = Zündschloss bleibt auf START hängen

# en: e4cf1e79
fault-key-stuck-on-start-explain = Der Schlüssel springt von START nicht zurück. Der Anlasser läuft mit dem Motor weiter.

# en: c2969ed1
fault-stale-fuel = Benzin zu alt

# en: 841e0314
fault-stale-fuel-explain = Altes Benzin verdunstet nicht mehr gut genug zum Zünden und verharzt die Düsen.

# en: 69718ed5
fault-water-in-petrol = Wasser oder Dreck im Benzin

# en: f38db530
fault-water-in-petrol-explain = In der Schwimmerkammer oder im Tank steht Wasser oder Dreck und kommt statt Benzin an die Düse.

# en: 15856045
fault-petrol-filter-blocked = Benzinfilter, Sieb oder Schlauch zu

# en: 7c002aae
fault-petrol-filter-blocked-explain = Filter, Tanksieb oder ein innen aufgequollener Schlauch lässt zu wenig Benzin durch.

# en: af49037b
fault-petrol-pump-failed = Benzinpumpe fördert nicht

# en: b3888874
fault-petrol-pump-failed-explain = Die Pumpe, ihr Unterdruckschlauch oder ihr Strom fehlt. Der Vergaser läuft leer.

# en: 40e65bcf
fault-vapour-lock = Benzin kocht in der heißen Leitung

# en: 84abf82d
fault-vapour-lock-explain = Am heißen Motor wird das Benzin zu Blasen. Beim Vergaser kommt nichts Flüssiges an.

# en: f060c8a8
fault-petrol-injection-fault = Benzineinspritzung fördert nicht

# en: 1c1477f6
fault-petrol-injection-fault-explain = Pumpe im Tank, Druck oder eine Düse der Benzineinspritzung fällt aus.

# en: 967f6860
fault-glow-plugs-failed = Eine oder mehrere Glühkerzen kaputt

# en: bb126b20
fault-glow-plugs-failed-explain = Einige Zylinder werden nicht vorgewärmt. Kalt dreht der Motor, ohne zu zünden, oder er stolpert.

# en: 9b4f45b7
fault-glow-relay-failed = Glührelais, Glühzeitgerät, Sicherung oder Schiene

# en: d70ab1c9
fault-glow-relay-failed-explain = An den Glühkerzen kommt kein Strom an. Der kalte Motor wird nicht vorgewärmt.

# en: ca49330d
fault-preheat-too-short = Nicht oder zu kurz vorgeglüht

# en: 98115609
fault-preheat-too-short-explain = Es wurde gestartet, bevor die Glühkerzen heiß waren.

# en: db271f24
fault-hoses-wrong = Kraftstoffschläuche vertauscht, geknickt oder Filter falsch herum

# en: 53b34bf2
fault-hoses-wrong-explain = Seit der letzten Arbeit sind Vor- und Rücklauf vertauscht, ein Schlauch ist geknickt, oder ein Filter sitzt falsch herum.

# en: a328ed15
fault-start-relay-failed = Startrelais kaputt

# en: b195782e
fault-start-relay-failed-explain = Das Relais zwischen Zündschloss und Magnetschalter gibt den Startbefehl nicht weiter.

# en: 3acda645
fault-solenoid-coil-open = Spule von Magnetschalter oder Schütz unterbrochen

# en: 5d9da328
fault-solenoid-coil-open-explain = Die Wicklung, die die Kontakte zusammenzieht, ist gebrochen.

# en: e5bc9ed2
fault-solenoid-pull-in-open = Einzugswicklung des Magnetschalters unterbrochen

# en: 52683c62
fault-solenoid-pull-in-open-explain = Eine der beiden Wicklungen des Magnetschalters ist gebrochen. Der Kern zuckt nur.

# en: f526d25f
fault-solenoid-hold-in-open = Haltewicklung des Magnetschalters unterbrochen

# en: d849afde
fault-solenoid-hold-in-open-explain = Der Magnetschalter zieht an, kann aber nicht halten. Er rattert, obwohl die Batterie gut ist.

# en: 6136a7a8
fault-solenoid-contacts-burnt = Kontakte im Magnetschalter verbrannt

# en: 3cb07dee
fault-solenoid-contacts-burnt-explain = Der Magnetschalter klackt, aber seine Kontakte geben zu wenig Strom an den Anlasser.

# en: bc6e8528
fault-solenoid-sticking = Kern des Magnetschalters hängt

# en: bbad360d
fault-solenoid-sticking-explain = Die Spule zieht, aber der Kern geht schwer und schließt die Kontakte nicht.

# en: 65c65b85
fault-solenoid-wont-release = Magnetschalter oder Relais lässt nicht los

# en: 203dcda8
fault-solenoid-wont-release-explain = Die Kontakte sind verschweißt. Der Anlasser läuft weiter, obwohl der Schlüssel zurück ist.

# en: fb368556
fault-oil-low-stop = Vom Ölwächter abgestellt

# en: ac338ef6
fault-oil-low-stop-explain = Der Ölwächter stellt den Motor ab, weil zu wenig Öl drin ist oder die Maschine schief steht.

# en: 248aa2a8
fault-oil-switch-faulty = Ölschalter oder sein Kabel kaputt

# en: 3be4240b
fault-oil-switch-faulty-explain = Der Ölwächter stellt den Motor ab, obwohl genug Öl drin ist.

# en: 15ac1172
fault-tilt-stop = Vom Kippschalter abgestellt

# en: fdf7b347
fault-tilt-stop-explain = Die Maschine lag auf der Seite oder steht schief. Der Kippschalter hält den Motor aus.

# en: 42a5a3ff
fault-parasitic-draw = Im Stand bleibt etwas eingeschaltet

# en: 2b5fd920
fault-parasitic-draw-explain = Etwas bleibt an und macht die Batterie leer, während die Maschine steht.

# en: 9dab19a6
fault-alternator-draw = Lichtmaschine oder Regler zieht im Stand Strom

# en: 9f6775bd
fault-alternator-draw-explain = Eine Diode, ein Rückstromschalter oder der Regler lässt im Stand Strom über die Lichtmaschine zurücklaufen.

# en: cb574121
fault-bare-wire-draw = Angefressenes oder blankes Kabel macht die Batterie leer

# en: f5e35a75
fault-bare-wire-draw-explain = Zwei blanke Kabel berühren sich. Es fließt Strom, obwohl der Schlüssel abgezogen ist.

# en: 0c4ae0ac
fault-start-wire-broken = Kabel im Startstromkreis gebrochen

# en: 5e5e0b1a
fault-start-wire-broken-explain = Das Kabel zwischen den Sicherheitsschaltern und dem Magnetschalter oder Relais ist gebrochen.

# en: faa9dc42
fault-solenoid-wire-broken = Kabel vom Relais zum Magnetschalter gebrochen

# en: d6ce33fd
fault-solenoid-wire-broken-explain = Das Relais geht, aber das Kabel zum Magnetschalter oder sein Stecker ist ab oder gebrochen.

# en: 725fed41
fault-start-circuit-resistance = Oxidierte Stecker im Startstromkreis

# en: 7bee8b64
fault-start-circuit-resistance-explain = Grüne Stecker und müde Kontakte lassen dem Magnetschalter zu wenig Spannung zum Anziehen.

# en: 459724e2
fault-dash-feed-broken = Stecker oder Kabel zu den Armaturen schlecht

# en: 83b0fc21
fault-dash-feed-broken-explain = Ein oxidierter Stecker oder ein gebrochenes Kabel vor oder hinter dem Zündschloss nimmt allen Armaturen den Strom.

# en: 44d786b8
fault-wired-wrong = Kabel nach Arbeiten falsch angeklemmt

# en: 1ee28e79
fault-wired-wrong-explain = Seit der letzten Arbeit sitzt ein Kabel am falschen Anschluss oder wurde vergessen.

# en: 443a3846
fault-drive-not-engaging = Anlasserritzel greift nicht

# en: d02ac7cb
fault-drive-not-engaging-explain = Der Anlasser läuft, aber sein Ritzel dreht den Motor nicht mit.

# en: f8a97e07
fault-ring-gear-teeth = Zahnkranz verschlissen oder ausgebrochen

# en: 61fd6ce7
fault-ring-gear-teeth-explain = Wo der Motor gern stehen bleibt, sind die Zähne weg, und das Ritzel ratscht.

# en: 59ad50bc
fault-starter-brushes-worn = Kohlen im Anlasser verschlissen

# en: d3dc4ceb
fault-starter-brushes-worn-explain = Die Kohlen drücken nicht mehr auf den Kollektor. Der Anlasser bekommt keinen Strom.

# en: 1546a699
fault-starter-armature-fault = Wicklung im Anlasser kaputt

# en: 6e962323
fault-starter-armature-fault-explain = Eine Wicklung im Anlasser ist unterbrochen oder hat Schluss.

# en: 2f6a8d81
fault-starter-dragging = Anlasser schleift

# en: 927d258f
fault-starter-dragging-explain = Der Anlasser reibt innen und frisst den Strom, mit dem er den Motor drehen soll.

# en: 1798147a
fault-starter-jammed = Anlasser im Zahnkranz verklemmt

# en: d665aeac
fault-starter-jammed-explain = Das Ritzel hat sich im Zahnkranz verkeilt, oder der Anlasser ist blockiert.

# en: 916d824e
fault-stop-solenoid-dead = Abstellmagnet oder sein Gestänge fest

# en: b2c54418
fault-stop-solenoid-dead-explain = Der Magnet, der den Diesel freigibt, bewegt sich nicht. Die Pumpe bleibt auf Stopp.

# en: 2c9c10dd
fault-stop-solenoid-no-feed = Abstellmagnet falsch versorgt (Sicherung, Relais, Kabel)

# en: eb80bcbd
fault-stop-solenoid-no-feed-explain = Sicherung, Relais, Zeitglied oder Kabel versorgt den Abstellmagneten nicht, wie es sein soll. Die Pumpe bleibt auf Stopp.

# en: 5328008d
fault-stop-knob-out = Abstellzug noch gezogen

# en: 348d0ed2
fault-stop-knob-out-explain = Der Abstellzug hält die Pumpe noch auf Stopp.

# en: 2ed747da
fault-stop-cable-stuck = Abstellzug gerissen oder Hebel hängt auf Stopp

# en: 2a932666
fault-stop-cable-stuck-explain = Der Knopf ist drin, aber der Zug oder der Hebel an der Pumpe geht nicht mit.

# en: 8fb44abe
fault-battery-link-bad = Verbindung zwischen den Batterien schlecht

# en: d1ac6af1
fault-battery-link-bad-explain = Das Kabel zwischen den beiden Batterien hat schlechten Kontakt.

# en: 2c221e95
fault-one-battery-weak = Eine der beiden Batterien ist schlecht

# en: 0d08c54c
fault-one-battery-weak-explain = Eine der beiden Batterien ist hin und zieht die gute mit herunter.

# en: 36f2a611
fault-isolator-failed = Kontakte im Batterietrennschalter schlecht

# en: 87b4e88c
fault-isolator-failed-explain = Der Trennschalter ist ein, aber seine Kontakte tragen den Strom nicht mehr.

# en: f7d8a6c0
fault-lithium-shut-off = Lithium-Batterie hat sich selbst abgeschaltet

# en: aea4a6e1
fault-lithium-shut-off-explain = Der Schutz in der Lithium-Batterie hat sie abgeschaltet, weil sie leer oder zu kalt ist.

## Beobachtungen

# en: 749e28ee
observation-air-filter-look = Aussehen des Luftfilters

# en: 5137c876
state-air-filter-look-clean = Sauber

# en: 58752b75
state-air-filter-look-dirty = Schmutzig

# en: 0c067ba8
state-air-filter-look-blocked = Zu, nass oder angefressen

# en: b2ea4397
observation-exhaust-look = Auspuffende

# en: ed077f3d
state-exhaust-look-open = Frei

# en: a35f345e
state-exhaust-look-blocked = Nest, Dreck, verbogen oder zerdrückt

# en: d0a1fa4f
observation-contactor-out-volts = Spannung am Ausgangsbolzen des Schützes bei START

# en: d5a98cdb
state-contactor-out-volts-none = Unter 1 V

# en: 71bfd148
state-contactor-out-volts-low = 1 bis 8 V

# en: e696f5f4
state-contactor-out-volts-good = Über 8 V

# en: 98da5707
observation-cable-to-earth = Widerstand vom Pluskabel gegen Masse, Batterie ab

# en: 11c41373
state-cable-to-earth-short = Unter 1 Ohm

# en: 59811502
state-cable-to-earth-load = 1 bis 200 Ohm

# en: a16da569
state-cable-to-earth-open = Über 200 Ohm

# en: 722f4fc6
observation-spark-at-clamp = Funke beim Anschließen des letzten Batteriekabels

# en: d7a7cad1
state-spark-at-clamp-none = Keiner oder ein winziger

# en: 4312a2b8
state-spark-at-clamp-big = Jedes Mal ein großer

# en: bd9008aa
state-spark-at-clamp-not-seen = Nicht gesehen

# en: eaec755e
observation-intake-joint = Verbindung zwischen Vergaser und Motor

# en: ce0cc841
state-intake-joint-tight = Dicht

# en: d41ca0f8
state-intake-joint-loose = Lose, gerissen oder rissig

# en: c0c72f5c
observation-charge-lamp = Ladelampe oder Batteriezeichen im Lauf

# en: 9045ae3c
state-charge-lamp-goes-out = Geht aus, wie es sein soll

# en: b3691b6f
state-charge-lamp-stays-on = Bleibt an oder flackert

# en: 062115cf
state-charge-lamp-never-lights = Leuchtet nie

# en: 8958b5af
state-charge-lamp-not-known = Es gibt keine

# en: 263f1922
observation-alternator-belt = Keilriemen der Lichtmaschine

# en: d8eb1de9
state-alternator-belt-sound = Heil und stramm

# en: 17bd97a4
state-alternator-belt-slack = Schlapp oder verglast

# en: 5557d77c
state-alternator-belt-gone = Gerissen oder ab

# en: cfd565c8
observation-charging-volts = Batteriespannung bei laufendem Motor

# en: 7cac3d39
state-charging-volts-none = Unter 13 V

# en: f4d0c246
state-charging-volts-low = 13 bis 13,7 V

# en: 0f2a591a
state-charging-volts-good = 13,7 bis 15 V

# en: 97081356
state-charging-volts-cold-only = 15 bis 15,3 V

# en: a751c5f4
state-charging-volts-high = Über 15,3 V

# en: cb509692
observation-choke-flap = Chokeklappe, wenn der Hebel bewegt wird

# en: c78d2a79
state-choke-flap-moves = Geht richtig auf und zu

# en: 9e96220e
state-choke-flap-stays-open = Geht nicht zu

# en: e9cb45b3
state-choke-flap-stays-shut = Geht nicht auf

# en: 1442f5a2
observation-joint-look = Aussehen der Klemmen und Kabelenden

# en: c005bc7f
state-joint-look-clean = Sauber und fest

# en: bb29be0a
state-joint-look-corroded = Weißer oder grüner Belag

# en: ee3dcd04
state-joint-look-loose = Mit der Hand zu bewegen

# en: ada20b12
state-joint-look-hot = Heiß oder angeschmort

# en: 38bdf820
observation-controls-set = Hebel und Pedale wie zum Starten

# en: c57c0d19
state-controls-set-right = Alles wie zum Starten

# en: 8be617eb
state-controls-set-not-right = Eines nicht

# en: 0cd08b1e
observation-stop-button-look = Not-Aus-Knopf

# en: 1d9e3d7f
state-stop-button-look-out = Herausgezogen

# en: e3f8499c
state-stop-button-look-pressed = Eingedrückt

# en: ce795f35
observation-bar-look = Sicherheitsbügel oder Haltebügel

# en: 3786a57e
state-bar-look-held = Ganz unten oder gehalten

# en: 9261b1bc
state-bar-look-released = Oben oder losgelassen

# en: 201480be
observation-diesel-bubbles = Luftblasen an der Entlüftungsschraube oder im klaren Schlauch

# en: 63980060
state-diesel-bubbles-none = Keine Blasen

# en: 32a9fcb8
state-diesel-bubbles-bubbles = Blasen oder Schaum

# en: b0f16051
observation-hand-primer = Handpumpe am Filter

# en: 003717fa
state-hand-primer-firm = Wird fest

# en: d555b88f
state-hand-primer-soft = Bleibt weich

# en: cb216329
observation-other-key = Nach einer Minute ohne Schlüssel, oder mit anderem Schlüssel oder PIN

# en: 3376bd93
state-other-key-not-tried = Nicht probiert

# en: b45adc23
state-other-key-works = Dann sprang sie an

# en: 41f9d57c
state-other-key-no-change = Keine Änderung

# en: 49c2e2bc
observation-reader-talks = Auslesegerät am Diagnosestecker

# en: 46b00aa1
state-reader-talks-talks = Spricht mit dem Steuergerät

# en: 7e49c68d
state-reader-talks-silent = Keine Antwort

# en: 61be905b
observation-controller-feed-volts = Spannung an den Versorgungspins des Steuergeräts, Zündung EIN

# en: e5167a79
state-controller-feed-volts-none = Unter 2 V

# en: 2f35c2b5
state-controller-feed-volts-weak = 2 bis 11 V

# en: 717dd9ae
state-controller-feed-volts-good = Über 11 V

# en: fb3b552b
observation-turns-by-hand = Motor von Hand drehen

# en: 8bc2d5eb
state-turns-by-hand-free = Dreht gleichmäßig schwer

# en: e2d19f8a
state-turns-by-hand-stiff = Rundum schwer

# en: 577c2254
state-turns-by-hand-stuck = Fest

# en: 034055e4
observation-oil-look = Motoröl am Peilstab

# en: a7248eeb
state-oil-look-normal = Normal

# en: 71980c8d
state-oil-look-overfull = Zu viel

# en: 093f5aed
state-oil-look-milky = Milchig

# en: 144f4d3b
state-oil-look-smells-of-fuel = Riecht nach Kraftstoff

# en: 31e0b2d0
state-oil-look-low = Zu wenig

# en: ac452463
observation-cylinder-liquid = Was aus dem Zylinder kommt

# en: 67e1bca0
state-cylinder-liquid-nothing = Nichts

# en: 7c623af2
state-cylinder-liquid-liquid = Öl, Benzin oder Wasser

# en: 04f7ac15
observation-oil-grade = Sorte des Motoröls

# en: 3b243be0
state-oil-grade-winter = 0W oder 5W

# en: 2166e67c
state-oil-grade-all-year = 10W oder 15W

# en: 35f65d21
state-oil-grade-summer = 20W oder Einbereichsöl

# en: 3a14dccc
observation-load-off-turns = Motor ohne Riemen und Kupplungen

# en: 687b403e
state-load-off-turns-still-hard = Geht immer noch schwer

# en: d6791e7c
state-load-off-turns-free-without-belt = Frei ohne den Riemen

# en: 7d933c1e
state-load-off-turns-free-without-drive = Frei, wenn Zapfwelle oder Pumpe abgehängt ist

# en: 66a1329c
observation-belt-look = Riemen und Riemenscheiben

# en: 46124e02
state-belt-look-sound = In Ordnung

# en: 377056a4
state-belt-look-marks = Riemen verbrannt, blank oder quietscht

# en: d737b4c9
observation-drive-turns-along = Messer oder Zapfwelle, während der Motor gedreht wird

# en: 73d85b16
state-drive-turns-along-stands = Steht still

# en: 7f60e03d
state-drive-turns-along-turns-along = Dreht mit

# en: 3e2ffd59
observation-tap-position = Kraftstoffhahn

# en: 2a27c09b
state-tap-position-open = Ganz offen

# en: a71fee95
state-tap-position-shut = Zu oder halb offen

# en: 0467be19
observation-fuel-valve-click = Klacken des Abschaltventils am Vergaser

# en: 56ee9af0
state-fuel-valve-click-clicks = Es klackt

# en: c08ebd57
state-fuel-valve-click-silent = Kein Klacken

# en: 1dd7d4d0
observation-fuel-valve-volts = Spannung am Abschaltventil, Zündung EIN

# en: e5167a79
state-fuel-valve-volts-none = Unter 2 V

# en: b1457e2c
state-fuel-valve-volts-weak = 2 bis 9 V

# en: 8b5ed47f
state-fuel-valve-volts-good = Über 9 V

# en: 7616ab93
observation-fuse-look = Aussehen der Hauptsicherung

# en: caba73a7
state-fuse-look-good = Ganz und sauber

# en: fca0d1c6
state-fuse-look-blown = Durchgebrannt

# en: adbf26fa
state-fuse-look-loose-or-burnt = Lose, staubig oder angeschmort

# en: e3ebaa16
state-fuse-look-not-found = Nicht gefunden

# en: 7e421c38
observation-fuse-again = Was eine neue Sicherung machte

# en: 360de032
state-fuse-again-not-tried = Keine neue Sicherung probiert

# en: d5c5ed5e
state-fuse-again-holds = Sie hält

# en: b9ffdc6e
state-fuse-again-at-once = Sie fliegt sofort

# en: 8e76f259
state-fuse-again-later = Sie fliegt nach einer Weile

# en: e36b728e
observation-fuse-out-volts = Spannung hinter der Hauptsicherung, Zündung EIN

# en: e5167a79
state-fuse-out-volts-none = Unter 2 V

# en: 20c03e54
state-fuse-out-volts-weak = 2 bis 11,5 V

# en: e6209561
state-fuse-out-volts-good = Über 11,5 V

# en: 40b720fd
observation-gas-bottle = Gasflasche oder Gasversorgung

# en: 6ad02267
state-gas-bottle-gas-left = Noch Gas da

# en: c6c094bc
state-gas-bottle-empty = Leer

# en: 52d4c369
observation-gas-valve = Ventil der Gasflasche

# en: ed077f3d
state-gas-valve-open = Frei

# en: a71fee95
state-gas-valve-shut = Zu oder halb offen

# en: 26302a33
observation-gas-frost = Eis am Regler

# en: 3472adb5
state-gas-frost-none = Kein Eis

# en: bcff7d8c
state-gas-frost-frosted = Weiß vereist

# en: 941b1055
observation-gas-lock-click = Klacken des Gas-Absperrventils

# en: 56ee9af0
state-gas-lock-click-clicks = Es klackt

# en: c08ebd57
state-gas-lock-click-silent = Kein Klacken

# en: 9d0e0332
observation-gas-pressure = Gasdruck hinter dem Regler

# en: 46eba004
state-gas-pressure-right = Nach Herstellerangabe

# en: a8717d66
state-gas-pressure-low = Zu niedrig oder keiner

# en: bebb608a
observation-cranks-in-gear = Schlüssel auf START mit eingelegtem Gang

# en: 94eea63a
state-cranks-in-gear-stays-still = Anlasser bleibt still

# en: 4d48607b
state-cranks-in-gear-cranks = Anlasser dreht

# en: 54c5836d
observation-cranks-with-pto = Schlüssel auf START mit eingeschalteter Zapfwelle

# en: 94eea63a
state-cranks-with-pto-stays-still = Anlasser bleibt still

# en: 4d48607b
state-cranks-with-pto-cranks = Anlasser dreht

# en: 9458fe68
observation-cranks-off-seat = Schlüssel auf START ohne jemanden auf dem Sitz

# en: 94eea63a
state-cranks-off-seat-stays-still = Anlasser bleibt still

# en: 4d48607b
state-cranks-off-seat-cranks = Anlasser dreht

# en: 67ffdba1
observation-cranks-clutch-up = Schlüssel auf START ohne Kupplung

# en: 94eea63a
state-cranks-clutch-up-stays-still = Anlasser bleibt still

# en: 4d48607b
state-cranks-clutch-up-cranks = Anlasser dreht

# en: b3f0c675
observation-cranks-brake-off = Schlüssel auf START mit gelöster Bremse

# en: 94eea63a
state-cranks-brake-off-stays-still = Anlasser bleibt still

# en: 4d48607b
state-cranks-brake-off-cranks = Anlasser dreht

# en: a8d01a42
observation-bridges-left = Überbrückungen und lose Stecker

# en: 7d0b2f24
state-bridges-left-none = Keine mehr da

# en: c26cfa43
state-bridges-left-found = Gefunden und beseitigt

# en: 6ccb9d72
observation-three-starts = Drei Starts, einer davon heiß

# en: 10243133
state-three-starts-all = Alle drei

# en: 5ebdf412
state-three-starts-not-all = Nicht alle drei

# en: d0bbfc89
observation-charge-after-work = Ladespannung nach der Arbeit

# en: 987c9a3c
state-charge-after-work-in-band = Wie sie sein soll

# en: 9876740d
state-charge-after-work-out = Zu niedrig oder zu hoch

# en: 25a58883
observation-why-flat = Warum die Batterie leer war

# en: eba7a1f6
state-why-flat-known = Bekannt und behoben

# en: 117adf01
state-why-flat-unknown = Nicht bekannt

# en: bd865883
state-why-flat-was-not = Sie war nicht leer

# en: d428b0f7
observation-points-look = Unterbrecherkontakte

# en: c8cd23b3
state-points-look-sound = Sauber und öffnen

# en: 2dfce09a
state-points-look-bad = Verbrannt, schmutzig oder öffnen nicht

# en: 33a7c8d3
observation-distributor-look = Verteilerkappe und Verteilerfinger

# en: 5207032e
state-distributor-look-sound = Sauber und trocken

# en: 3e5d7106
state-distributor-look-bad = Rissig, rostig oder nass

# en: 66c9e7ec
observation-impulse-click = Schnappen am Magnetzünder

# en: 0597a24d
state-impulse-click-clicks = Schnappt beim Drehen

# en: 6f635a7f
state-impulse-click-silent = Nichts schnappt

# en: f9d530d5
observation-spark-kill-wire-off = Funke mit abgezogenem Abstellkabel

# en: 43cdb159
state-spark-kill-wire-off-good = Starker Funke

# en: f6c39043
state-spark-kill-wire-off-weak = Schwacher Funke

# en: 8d678ff4
state-spark-kill-wire-off-none = Kein Funke

# en: fe38b077
observation-kill-wire-earth = Abstellkabel gegen Masse, Zündung EIN

# en: dd4c7340
state-kill-wire-earth-open = Keine Verbindung zur Masse

# en: e25feee6
state-kill-wire-earth-earthed = Immer an Masse, egal was man macht

# en: aad63a31
state-kill-wire-earth-follows-switch = Wechselt mit einem Sicherheitsschalter

# en: 8c09c598
observation-lever-at-engine = Stoppschalter am Motor, Haltebügel gehalten

# en: 62bafd78
state-lever-at-engine-opens = Ganz herübergezogen, Schalter offen

# en: f93543f5
state-lever-at-engine-stays = Nicht herübergezogen oder noch geschlossen

# en: 46f383b6
observation-engine-switch = Schalter am Motor selbst

# en: a8b727fe
state-engine-switch-run = Auf RUN oder EIN

# en: 839896b8
state-engine-switch-stop = Auf STOP oder AUS

# en: e91faf80
state-engine-switch-no-such = Er hat keinen

# en: c3a923a4
observation-coil-feed-volts = Spannung an der Versorgung der Spule, Zündung EIN

# en: e5167a79
state-coil-feed-volts-none = Unter 2 V

# en: 1a8fcef2
state-coil-feed-volts-weak = 2 bis 5 V

# en: c9c3f8e8
state-coil-feed-volts-good = Über 5 V

# en: f1803ad9
observation-flywheel-key = Keil im Schwungrad

# en: fd550560
state-flywheel-key-whole = Ganz

# en: 46bcb56e
state-flywheel-key-sheared = Abgeschert oder verbogen

# en: 586a4420
observation-lead-order = Reihenfolge der Kerzenkabel

# en: 6901b578
state-lead-order-right = Reihenfolge und Zündzeitpunkt richtig

# en: c51e4da1
state-lead-order-wrong = Vertauscht oder einen Zahn daneben

# en: 498d8024
observation-spark = Funke am Prüfer

# en: 6985bc32
state-spark-good = Stark und regelmäßig

# en: a8ab7be3
state-spark-weak = Schwach oder unregelmäßig

# en: 8d678ff4
state-spark-none = Kein Funke

# en: c8aa327b
observation-plug-look = Kerze nach dem Durchdrehen

# en: 702ec3f2
state-plug-look-dry = Trocken

# en: 5690f06c
state-plug-look-wet = Nass

# en: 3b0cda93
state-plug-look-sooty = Verrußt oder verölt

# en: 6a4586c1
observation-plug-cap = Kerzenstecker und Kerzenkabel

# en: 5ed7626a
state-plug-cap-tight = Sitzt und ist heil

# en: 94903b46
state-plug-cap-loose = Ab, lose oder rissig

# en: 1b8559d9
observation-spark-new-plug = Funke mit neuer Kerze

# en: 8e272739
state-spark-new-plug-good = Jetzt starker Funke

# en: 5f64b419
state-spark-new-plug-same = Nicht besser

# en: be2c56a5
observation-switch-plugs-look = Sicherheitsschalter, ihre Stecker und Kabel

# en: 6c7598da
state-switch-plugs-look-sound = Alle drauf, heil und frei

# en: a1711ddb
state-switch-plugs-look-plug-off = Ein Stecker ist ab

# en: 27d5eae3
state-switch-plugs-look-torn = Ein Kabel ist angefressen, gerissen oder blank

# en: 94665ac9
state-switch-plugs-look-mud = Voll Dreck oder Gras

# en: fde63353
state-switch-plugs-look-stuck = Ein Schalter oder sein Hebel hängt oder ist verbogen

# en: 0dbd7de4
observation-key-feed-volts = Spannung am Eingang des Zündschlosses, Zündung EIN

# en: e5167a79
state-key-feed-volts-none = Unter 2 V

# en: ac3d66b6
state-key-feed-volts-weak = 2 bis 11,4 V

# en: b6015789
state-key-feed-volts-good = Über 11,4 V

# en: db181dcc
observation-key-run-volts = Spannung am Ausgang des Zündschlosses, Zündung EIN

# en: e5167a79
state-key-run-volts-none = Unter 2 V

# en: ac3d66b6
state-key-run-volts-weak = 2 bis 11,4 V

# en: b6015789
state-key-run-volts-good = Über 11,4 V

# en: 418633f7
observation-key-start-volts = Spannung am Ausgang des Zündschlosses bei START

# en: d5a98cdb
state-key-start-volts-none = Unter 1 V

# en: 71bfd148
state-key-start-volts-weak = 1 bis 8 V

# en: e696f5f4
state-key-start-volts-good = Über 8 V

# en: c04c5f7e
observation-key-plug-look = Stecker und Kabel hinter dem Zündschloss

# en: c005bc7f
state-key-plug-look-sound = Sauber und fest

# en: 6bdc345e
state-key-plug-look-burnt = Geschmolzen oder verbrannt

# en: 2ea93154
state-key-plug-look-green = Grün oder rostig

# en: 3cf37df8
state-key-plug-look-off = Lose oder ab

# en: 76650bf4
observation-key-spring = Schlüssel auf START losgelassen

# en: 3e3a9017
state-key-spring-springs-back = Springt von selbst zurück

# en: f56dabe4
state-key-spring-stays = Bleibt auf START

# en: 1ad4b403
state-key-spring-no-key = Sie hat einen Knopf oder keinen Schlüssel

# en: 2410d42a
observation-preheat-lamp = Vorglühlampe

# en: f65a2bc5
state-preheat-lamp-normal = Geht an und wieder aus

# en: 0c2d72b3
state-preheat-lamp-never = Geht nie an

# en: 19f81761
state-preheat-lamp-stays = Bleibt an oder blinkt

# en: a081828d
observation-preheat-time = Wie lange vorgeglüht wurde

# en: 78809b78
state-preheat-time-full = Wie immer oder länger

# en: 31b1a02c
state-preheat-time-short = Kaum oder gar nicht

# en: 4f283d62
observation-glow-current = Strom der Glühkerzen

# en: e957fc12
state-glow-current-all = Wie für alle Kerzen

# en: 31e0b2d0
state-glow-current-some = Zu wenig

# en: dc937b59
state-glow-current-none = Keiner

# en: f52be2dc
observation-glow-amps = Strom je Glühkerze

# en: 52647e19
state-glow-amps-none = Unter 0,5 A

# en: 452668c9
state-glow-amps-some = 0,5 bis 7 A

# en: 2239a452
state-glow-amps-look-into = 7 bis 7,6 A

# en: 4f24f9af
state-glow-amps-all = Über 7,6 A

# en: 9117c545
observation-glow-rail-volts = Spannung an der Glühschiene beim Vorglühen

# en: e5167a79
state-glow-rail-volts-none = Unter 2 V

# en: b1457e2c
state-glow-rail-volts-weak = 2 bis 9 V

# en: 8b5ed47f
state-glow-rail-volts-good = Über 9 V

# en: 3f3f9abb
observation-hose-run = Verlauf der Kraftstoffschläuche

# en: 1b3ee3fc
state-hose-run-right = Richtig, nirgends geknickt

# en: 7d003cd4
state-hose-run-wrong = Vertauscht, geknickt oder falsch herum

# en: 7505d37b
observation-relay-out-volts = Spannung am Ausgang des Startrelais bei START

# en: d5a98cdb
state-relay-out-volts-none = Unter 1 V

# en: 71bfd148
state-relay-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-relay-out-volts-good = Über 8 V

# en: da524e86
observation-oil-switch = Kabel des Ölschalters gegen Masse, Ölstand richtig

# en: ed077f3d
state-oil-switch-open = Frei

# en: d242300d
state-oil-switch-earthed = An Masse

# en: 62e0d0c8
observation-stands-level = Wie die Maschine steht

# en: 06ee3db7
state-stands-level-level = Ungefähr gerade

# en: 25d52f67
state-stands-level-tilted = Deutlich schief

# en: e15ebece
observation-lit-key-out = Licht oder Summen bei abgezogenem Schlüssel

# en: cd18b2fb
state-lit-key-out-dark = Alles dunkel und still

# en: 69edb64a
state-lit-key-out-something-on = Etwas leuchtet oder summt

# en: 38f7fdf8
observation-resting-draw = Ruhestrom, alles aus

# en: 814fceaf
state-resting-draw-normal = Unter 0,035 A

# en: 46d681b7
state-resting-draw-look-into = 0,035 bis 0,1 A

# en: d7fc7396
state-resting-draw-high = Über 0,1 A

# en: ed2328fa
observation-draw-goes-with = Der Ruhestrom sinkt

# en: 85a01ef9
state-draw-goes-with-a-fuse = Wenn eine Sicherung gezogen wird

# en: d258a2a1
state-draw-goes-with-alternator-lead = Wenn das Kabel der Lichtmaschine ab ist

# en: c41a3045
state-draw-goes-with-neither = Bei beidem nicht

# en: b36ebcfd
observation-battery-alone = Geladene Batterie, eine Nacht mit abgenommenem Kabel

# en: 3376bd93
state-battery-alone-not-tried = Nicht probiert

# en: 2da1f47c
state-battery-alone-holds = Die Volt bleiben

# en: ef2d0060
state-battery-alone-falls = Die Volt fallen um 0,2 V oder mehr

# en: ede6387f
observation-wires-look = Aussehen der Kabel

# en: 55bd87f4
state-wires-look-sound = Nichts zu sehen

# en: 47d94a2e
state-wires-look-chewed = Angefressen, durchgescheuert oder blank

# en: abcea1bf
state-wires-look-burnt = Verbrannt oder geschmolzen

# en: ae788fd1
state-wires-look-green = Stecker grün oder nass

# en: a1711ddb
state-wires-look-plug-off = Ein Stecker ist ab

# en: 95afdc99
observation-teeth-look = Zähne von Ritzel und Zahnkranz

# en: 46124e02
state-teeth-look-sound = In Ordnung

# en: 9c579fa2
state-teeth-look-pinion-bad = Ritzel verschlissen oder fest

# en: 51d2fc94
state-teeth-look-ring-bad = Zahnkranz verschlissen

# en: 382a6873
observation-brush-look = Kohlen und Kollektor

# en: 08479654
state-brush-look-sound = Lang genug und sauber

# en: 736a6328
state-brush-look-worn = Kohlen verschlissen oder klemmen

# en: c39241da
state-brush-look-burnt = Kollektor oder Wicklung verbrannt

# en: 22fbfbbf
observation-stop-valve-click = Klacken des Abstellmagneten

# en: 56ee9af0
state-stop-valve-click-clicks = Es klackt

# en: c08ebd57
state-stop-valve-click-silent = Kein Klacken

# en: 9524546e
observation-stop-knob = Abstellzug

# en: 66336691
state-stop-knob-in = Ganz hineingeschoben

# en: a7c6f8be
state-stop-knob-out = Draußen oder halb draußen

# en: 062b27b0
observation-stop-lever = Abstellhebel an der Einspritzpumpe

# en: bc3142c1
state-stop-lever-runs = Auf Lauf

# en: 002cd1b8
state-stop-lever-stays-at-stop = Bleibt auf Stopp

# en: 6473ef74
observation-stop-solenoid-feed = Versorgung des Abstellmagneten, Zündung EIN und START

# en: 58ede9f0
state-stop-solenoid-feed-right = Wie es die Schaltung will

# en: fd3d897a
state-stop-solenoid-feed-wrong = Fehlt, schwach oder immer da

# en: 9a7a7f7a
observation-link-drop-volts = Spannung entlang der Verbindung zwischen den Batterien bei START

# en: caf12bf7
state-link-drop-volts-good = Unter 0,2 V

# en: 735c53ba
state-link-drop-volts-look-into = 0,2 bis 0,5 V

# en: df16c450
state-link-drop-volts-bad = Über 0,5 V

# en: ff5551fe
observation-battery-difference-volts = Unterschied zwischen den beiden Batterien in Ruhe

# en: dac7222c
state-battery-difference-volts-even = Unter 0,3 V

# en: 3769b130
state-battery-difference-volts-apart = Über 0,3 V

# en: d179aade
observation-isolator-drop-volts = Spannung über dem Trennschalter bei START

# en: 1d273080
state-isolator-drop-volts-good = Unter 0,1 V

# en: 0240987d
state-isolator-drop-volts-look-into = 0,1 bis 0,5 V

# en: df16c450
state-isolator-drop-volts-bad = Über 0,5 V

# en: 59b6d8cc
observation-battery-kind = Art der Batterie

# en: 5cb3c40e
state-battery-kind-lead = Blei (die übliche schwere)

# en: 96bc38cc
state-battery-kind-lithium = Lithium (Aufdruck Li oder LiFePO4)

# en: 278b1b2a
observation-compression = Kompression

# en: 8f24667b
state-compression-good = In Ordnung, gleichmäßig

# en: 8a03d5cb
state-compression-uneven = Ein Zylinder viel niedriger

# en: 5dc2022a
state-compression-low = Alle unter der Grenze

# en: eb1b0d76
observation-compression-with-oil = Kompression nach etwas Öl im Zylinder

# en: 36bfe41b
state-compression-with-oil-rises = Steigt deutlich

# en: cd797aae
state-compression-with-oil-stays = Bleibt gleich

# en: 053889cb
observation-leak-down = Wo die Luft beim Druckverlusttest hingeht

# en: 83b0ca3f
state-leak-down-tight = Fast nirgends

# en: 8f48c819
state-leak-down-valves = Ansaugung oder Auspuff

# en: c91cac7e
state-leak-down-crankcase = Öleinfüllung

# en: c0e8ada8
state-leak-down-gasket = Kühlwasser, Nachbarzylinder oder nach außen

# en: 9bdce74c
observation-cranking-sound = Klang beim Durchdrehen

# en: c89dfce2
state-cranking-sound-even = Gleichmäßige Takte

# en: 27d142cf
state-cranking-sound-free = Schnell und leicht, kaum Takte

# en: 0ac957c5
state-cranking-sound-uneven = Ein Takt fehlt

# en: 38759dac
observation-valve-gap = Ventilspiel

# en: 8da9e104
state-valve-gap-right = Wie der Hersteller sagt

# en: 9ee79f24
state-valve-gap-wrong = Zu groß, zu klein oder Kipphebel lose

# en: a8825915
observation-timing-marks = Steuermarken

# en: 694a9715
state-timing-marks-right = Stehen richtig

# en: 5363961c
state-timing-marks-wrong = Stehen daneben

# en: 416d07d2
observation-compression-lowest = Niedrigste Kompression eines kleinen Diesels

# en: 19a798d2
state-compression-lowest-under = Unter 25,5 bar

# en: 7c0bbe07
state-compression-lowest-look-into = 25,5 bis 27 bar

# en: 6c28ec75
state-compression-lowest-within = Über 27 bar

# en: aa0b8e0a
observation-compression-spread = Unterschied der Kompression zwischen den Zylindern

# en: 54b8a020
state-compression-spread-even = Unter 2,4 bar

# en: 94acf874
state-compression-spread-look-into = 2,4 bis 3 bar

# en: 81c3313c
state-compression-spread-uneven = Über 3 bar

# en: c033fc93
observation-display-says = Was die Anzeige sagt

# en: c4b17b22
state-display-says-normal = Wie immer

# en: 5a2bc8b6
state-display-says-blank = Dunkel oder leer

# en: faf7d422
state-display-says-lock-sign = Schlüssel-, Sperr- oder PIN-Zeichen

# en: 629f52d1
state-display-says-fluid-sign = Harnstoff- oder Filterwarnung

# en: 802ec4b0
state-display-says-set-control = Verlangt Sitz, Bremse oder Leerlauf

# en: b9dffcfc
state-display-says-low-volts = Unterspannung oder Batteriezeichen

# en: 098f25ed
state-display-says-code = Anderer Code oder andere Warnung

# en: 352fcde5
observation-dash-volts-start = Spannung auf der Anzeige beim Starten

# en: 17561cc5
state-dash-volts-start-off = Anzeige geht aus

# en: 492b70b4
state-dash-volts-start-collapses = Unter 7,5 V

# en: 340665ae
state-dash-volts-start-sags = 7,5 bis 9,3 V

# en: aecc2097
state-dash-volts-start-holds = 9,3 bis 11,7 V

# en: e8673011
state-dash-volts-start-no-load = Über 11,7 V

# en: e6e2613a
observation-found-bad = Als kaputt erkannt

# en: dfcb7c16
state-found-bad-battery = Batterie

# en: 1ebfdb04
state-found-bad-earth-cable = Massekabel oder seine Verbindung

# en: 3365acf6
state-found-bad-plus-cable = Pluskabel oder seine Verbindung

# en: 34a7a036
state-found-bad-fuse-holder = Sicherung oder ihr Halter

# en: 4bb64660
state-found-bad-isolator = Batterietrennschalter

# en: 27723f15
state-found-bad-key-switch = Zündschloss

# en: 53ea04d5
state-found-bad-seat-switch = Sitzschalter

# en: 8781541a
state-found-bad-brake-switch = Bremsschalter

# en: c43ef872
state-found-bad-clutch-switch = Kupplungsschalter

# en: b9f0476f
state-found-bad-neutral-switch = Leerlaufschalter

# en: d0767e8e
state-found-bad-pto-switch = Zapfwellenschalter

# en: 26be6511
state-found-bad-safety-switch = Sicherheitsschalter oder sein Kabel

# en: f1d95962
state-found-bad-start-relay = Startrelais

# en: 20032501
state-found-bad-solenoid = Magnetschalter

# en: 3863247f
state-found-bad-starter = Anlasser

# en: 4f2568eb
state-found-bad-starter-drive = Anlasserritzel oder Zahnkranz

# en: 3f0c6d62
state-found-bad-start-wire = Kabel im Startstromkreis

# en: 0c8fe205
state-found-bad-alternator = Lichtmaschine oder Regler

# en: f50bae69
state-found-bad-drain = Etwas, das die Batterie leer macht

# en: 31df66dc
state-found-bad-controller = Steuergerät

# en: 47377eab
state-found-bad-immobiliser = Wegfahrsperre oder Schlüsselcode

# en: a366cc10
state-found-bad-speed-sensor = Drehzahlsensor

# en: d54fa6c7
state-found-bad-plug = Zündkerze

# en: bedfab73
state-found-bad-plug-lead = Kerzenkabel oder Kerzenstecker

# en: a947d9f2
state-found-bad-coil = Zündspule oder Zündmodul

# en: 76e5a95f
state-found-bad-coil-feed = Versorgung der Zündspule

# en: bc18cad4
state-found-bad-kill-wire = Abstellkabel

# en: d774ff6f
state-found-bad-magneto = Magnetzünder

# en: e364cccf
state-found-bad-carburettor = Vergaser

# en: 719d90e9
state-found-bad-float = Schwimmer oder seine Nadel

# en: fad6496c
state-found-bad-choke = Choke oder Gas

# en: c57b73fc
state-found-bad-fuel-valve = Kraftstoff-Abschaltventil

# en: f2f0dd02
state-found-bad-fuel-pump = Kraftstoffpumpe

# en: 9522552b
state-found-bad-fuel-line = Kraftstoffleitung, Filter oder Tank

# en: c6ff0ee1
state-found-bad-tank-vent = Tankbelüftung

# en: 9875efe0
state-found-bad-injection-pump = Einspritzpumpe

# en: 4cb048d2
state-found-bad-injectors = Einspritzdüsen

# en: bead63f0
state-found-bad-rail = Raildruck

# en: 0a6c06af
state-found-bad-stop-solenoid = Abstellmagnet oder seine Versorgung

# en: 70ddac91
state-found-bad-glow-plugs = Glühkerzen

# en: bfa63b3d
state-found-bad-glow-relay = Glührelais oder Glühzeitgerät

# en: 8e4ebe09
state-found-bad-valves = Ventile oder ihr Antrieb

# en: 7dc5731c
state-found-bad-gasket = Zylinderkopfdichtung

# en: cfe44d6a
state-found-bad-rings = Ringe, Kolben oder Zylinder

# en: 410b9f47
state-found-bad-pto-clutch = Zapfwellenkupplung oder angetriebenes Teil

# en: 174f637a
observation-fuel-reaches-engine = Kraftstoff am Motor

# en: 85a39ab3
state-fuel-reaches-engine-yes = Ja

# en: 165286e6
state-fuel-reaches-engine-weak = Ein wenig

# en: 1ea442a1
state-fuel-reaches-engine-no = Nein

# en: a06337a5
observation-flow-stops-at = Wo der Kraftstoff aufhört

# en: bdf9823a
state-flow-stops-at-nowhere = Läuft ganz durch

# en: f3fe50ae
state-flow-stops-at-tank = Nicht einmal aus dem Tank

# en: 3dbdc08f
state-flow-stops-at-filter = Bis zum Filter

# en: 19e4fe21
state-flow-stops-at-pump = Bis zur Pumpe

# en: ab96f79b
observation-bowl-fuel = Was aus der Schwimmerkammer läuft

# en: 0ff79e71
state-bowl-fuel-plenty = Sauberes Benzin

# en: 247e5f8f
state-bowl-fuel-dirty = Wasser oder Dreck

# en: 83b0ca3f
state-bowl-fuel-little = Fast nirgends

# en: 477c1e8d
observation-prime-fires = Zünden mit ein paar Tropfen frischem Benzin

# en: d574b4b4
state-prime-fires-fires-briefly = Zündet kurz

# en: 09ec0ab4
state-prime-fires-nothing = Zündet nicht

# en: 71939925
observation-fuel-given = Was zuletzt getankt wurde

# en: bdd913ff
state-fuel-given-certain = Sicher der richtige Kraftstoff

# en: 683661c7
state-fuel-given-doubtful = Vielleicht etwas anderes

# en: 61cc1533
observation-fuel-grade = Sorte des Diesels

# en: 3c0b58e2
state-fuel-grade-winter = Winterdiesel

# en: d2dcc8f8
state-fuel-grade-summer = Sommerdiesel oder im Sommer gekauft

# en: 246d2091
observation-water-or-wax = Wasser oder Paraffin im Kraftstoff

# en: 71c97457
state-water-or-wax-none = Sauber und klar

# en: d2150304
state-water-or-wax-water = Wasser oder Dreck darin

# en: d3292f01
state-water-or-wax-wax = Trüb oder ausgeflockt

# en: 8afbe4ce
state-water-or-wax-ice = Eis darin

# en: 0c53263d
observation-fuel-level = Kraftstoff im Tank

# en: e1947c03
state-fuel-level-seen-enough = Nachgesehen: genug

# en: 2cf40338
state-fuel-level-said-enough = Müsste reichen

# en: f793de20
state-fuel-level-low = Wenig

# en: c6c094bc
state-fuel-level-empty = Leer

# en: b8d7d458
observation-fuel-age = Alter des Kraftstoffs

# en: 1ddf3e66
state-fuel-age-fresh = Unter einem Monat

# en: 9a3d68e7
state-fuel-age-months = Ein bis drei Monate

# en: 5db5a615
state-fuel-age-over-winter = Vom letzten Jahr

# en: 0477133a
state-fuel-age-years = Über ein Jahr

# en: 528fbed7
observation-fuel-drips = Tropfen oder nasser Fleck unter der Maschine

# en: 702ec3f2
state-fuel-drips-dry = Trocken

# en: e82162a5
state-fuel-drips-wet = Kraftstoff tropft oder es ist nass

# en: 38cbdcaf
observation-fuel-smell = Geruch und Farbe des Benzins

# en: 9816c2ea
state-fuel-smell-fresh = Frisch und klar

# en: fc6276ea
state-fuel-smell-stale = Sauer, wie Lack, oder dunkel

# en: e4e7ca49
observation-flooding-signs = Anzeichen, dass er abgesoffen ist

# en: dc937b59
state-flooding-signs-none = Keiner

# en: 28fbfd5c
state-flooding-signs-smell = Starker Benzingeruch am Auspuff

# en: 748c854e
state-flooding-signs-drips = Benzin tropft aus der Ansaugung

# en: f657ef52
observation-pump-sound = Geräusch der elektrischen Kraftstoffpumpe

# en: 61eaaa6a
state-pump-sound-runs = Läuft wie immer

# en: 82d91a04
state-pump-sound-silent = Nichts zu hören

# en: ea290abf
state-pump-sound-rattles = Laut oder rasselt

# en: 79d709d2
observation-last-use = Wann sie zuletzt lief

# en: de5d3171
state-last-use-hours = Vor Stunden

# en: 2fe62094
state-last-use-days = Vor Tagen

# en: 131b80c1
state-last-use-weeks = Vor Wochen

# en: 03f44095
state-last-use-months = Vor Monaten

# en: f6687203
observation-how-stopped = Wie sie zuletzt ausging

# en: a79fd441
state-how-stopped-switched-off-normally = Abgestellt wie immer

# en: a62af767
state-how-stopped-died-at-once = Schlagartig aus

# en: 9273b3b4
state-how-stopped-faded = Langsam abgestorben

# en: 565ed584
state-how-stopped-under-load = Unter Last abgestorben

# en: 9c36c698
state-how-stopped-would-not-stop = Wollte nicht ausgehen

# en: f262e7ba
observation-recent-event = Was kurz vorher war

# en: 7722c9af
state-recent-event-battery-removed = Batterie aus- oder eingebaut

# en: be2b3f96
state-recent-event-jump-started = Jemand hat Starthilfe gegeben

# en: 298e509a
state-recent-event-charged = Batterie geladen

# en: a2b632b9
state-recent-event-pressure-washed = Mit dem Hochdruckreiniger gewaschen

# en: 2e0e80c5
state-recent-event-welded = Daran geschweißt

# en: fc18cdd9
state-recent-event-hit-something = Irgendwo angestoßen

# en: e145c5e8
state-recent-event-tipped = Auf die Seite gekippt

# en: 75d28c35
state-recent-event-ran-dry = Tank leergefahren

# en: 97cb502e
state-recent-event-refuelled = Getankt

# en: 46b56607
state-recent-event-flooded = Im Wasser gestanden

# en: 1319edb2
state-recent-event-heavy-rain = Im Starkregen oder Schnee gestanden

# en: f7a9ad2e
state-recent-event-rodents-seen = Mäuse oder Ratten gesehen

# en: 7c17b131
state-recent-event-parts-replaced = Teile erneuert

# en: 138076e4
observation-recent-work = Arbeiten daran in letzter Zeit

# en: dfcb7c16
state-recent-work-battery-work = Batterie

# en: d71fc9ce
state-recent-work-cable-work = Kabel oder Masse

# en: c2d50ba4
state-recent-work-starter-work = Anlasser oder Magnetschalter

# en: 8e923e44
state-recent-work-switch-work = Zündschloss oder Sicherheitsschalter

# en: 83b96668
state-recent-work-wiring-work = Andere Kabel

# en: c12b3fdc
state-recent-work-fuel-work = Tank, Leitungen oder Filter

# en: e364cccf
state-recent-work-carburettor-work = Vergaser

# en: 3bcb9c82
state-recent-work-ignition-work = Kerze, Spule oder Unterbrecher

# en: a57d0108
state-recent-work-engine-work = Motor geöffnet

# en: 43c21158
state-recent-work-oil-work = Ölwechsel

# en: e22ae21a
state-recent-work-deck-work = Mähwerk oder Zapfwelle

# en: c106d1c0
observation-outdoors = Wetter an der Maschine

# en: 0ec53894
state-outdoors-hot = Heiß

# en: 329d8172
state-outdoors-mild = Mild

# en: 17636dd6
state-outdoors-frost = Frost

# en: af146ec5
state-outdoors-hard-frost = Starker Frost

# en: e2e66608
observation-battery-age = Alter der Batterie

# en: 448fdac0
state-battery-age-new = Unter zwei Jahren

# en: 4824f51a
state-battery-age-middle = Zwei bis vier Jahre

# en: 62aa4706
state-battery-age-old = Über vier Jahre

# en: 38a040da
observation-battery-goes-flat = Ob die Batterie von selbst leer wird

# en: 1ea442a1
state-battery-goes-flat-no = Nein

# en: a6b86e26
state-battery-goes-flat-overnight = Über Nacht

# en: f5eb5ae9
state-battery-goes-flat-days = In ein paar Tagen

# en: 7884602e
state-battery-goes-flat-weeks = In ein paar Wochen

# en: b385d200
observation-injector-line-fuel = Diesel an der gelösten Einspritzleitung

# en: 4cf5b47b
state-injector-line-fuel-spurts = Es spritzt

# en: 9efd6536
state-injector-line-fuel-dribbles = Es tröpfelt

# en: 67e1bca0
state-injector-line-fuel-none = Nichts

# en: bdb58b06
observation-return-bubbles = Blasen im klaren Rücklaufschlauch

# en: 63980060
state-return-bubbles-none = Keine Blasen

# en: 7cf444cc
state-return-bubbles-bubbles = Blasen, unter Last mehr

# en: 01685320
observation-injector-test = Düsen am Prüfgerät

# en: 987df719
state-injector-test-good = Druck und Strahl richtig

# en: 04e7f51c
state-injector-test-bad = Tropfen, zu schwach oder falscher Strahl

# en: b69fb333
observation-crank-signal = Motordrehzahl am Diagnosegerät beim Durchdrehen

# en: 51a70e2f
state-crank-signal-shown = Gleichmäßige Drehzahl

# en: 10c56f33
state-crank-signal-none = Keine, oder sie springt

# en: 4773d4f4
observation-rail-pressure = Kraftstoffdruck am Diagnosegerät beim Durchdrehen

# en: 7bcefc2f
state-rail-pressure-builds = Baut sich auf

# en: 5e1dfd5d
state-rail-pressure-too-low = Bleibt zu niedrig

# en: bf607d7c
observation-load-test = Batterie unter Last

# en: d9720c00
state-load-test-passes = Besteht

# en: c5d50770
state-load-test-fails = Besteht nicht

# en: 45b48cfc
observation-load-volts = Batteriespannung am Ende der Belastungsprüfung

# en: c87c1502
state-load-volts-fails = Unter 8,5 V

# en: 5ef0f451
state-load-volts-by-temperature = 8,5 bis 9,6 V

# en: b18b2060
state-load-volts-passes = Über 9,6 V

# en: 03f2af77
observation-work-since = Der Schaden und die letzte Arbeit

# en: c4a357b8
state-work-since-no-work = Es wurde nichts daran gemacht

# en: b729e4fd
state-work-since-before = Es war schon vor der Arbeit so

# en: 53506795
state-work-since-straight-after = Es kam gleich nach der Arbeit

# en: 7e710dd6
state-work-since-ran-after = Nach der Arbeit lief sie gut

# en: 2fc7c368
observation-smoke = Rauch aus dem Auspuff beim Durchdrehen

# en: dc937b59
state-smoke-none = Keiner

# en: 3495e757
state-smoke-white = Weiß

# en: c6cfe6e4
state-smoke-black = Schwarz

# en: ec7d56a0
state-smoke-blue = Blau

# en: e3bdf0b1
observation-bangs = Knallen aus Auspuff oder Ansaugung

# en: 9f49b052
state-bangs-none = Kein Knallen

# en: fc516f1e
state-bangs-bangs = Knallen oder Flamme

# en: 0f122907
observation-came-on = Wie der Schaden kam

# en: 86488070
state-came-on-suddenly = Von einem Mal aufs andere

# en: b389d996
state-came-on-gradually = Nach und nach, über Wochen

# en: 0dac84f3
observation-choke-effect = Was der Choke ändert

# en: ff718573
state-choke-effect-no-difference = Kein Unterschied

# en: d76e2915
state-choke-effect-only-with = Zündet oder läuft nur mit Choke

# en: 1eae339a
state-choke-effect-only-without = Besser ohne Choke

# en: 6208aaa2
observation-exhaust-puffs = Luft aus dem Auspuff beim Durchdrehen

# en: 31bc981f
state-exhaust-puffs-puffs = Es pufft

# en: de07d0b3
state-exhaust-puffs-hardly = Es kommt kaum etwas

# en: 71485731
observation-on-start = Was mit dem Schlüssel auf START passiert

# en: 51b6ced6
state-on-start-nothing = Gar nichts

# en: b4bea008
state-on-start-one-click = Ein Klack

# en: 0f7de35e
state-on-start-fast-clicks = Schnelles Klackern

# en: 0a8b5b0d
state-on-start-slow = Dreht langsam

# en: 1bbfc18c
state-on-start-turns-then-stops = Dreht ein Stück, dann Schluss

# en: f2fa36eb
state-on-start-uneven = Dreht ungleichmäßig

# en: d3291b1b
state-on-start-kicks-back = Schlägt zurück

# en: 7ca64bd7
state-on-start-spins-alone = Anlasser surrt nur

# en: 12c14257
state-on-start-grinds = Ratschen oder Kratzen

# en: 13aebad2
state-on-start-turns-no-fire = Dreht gut, zündet nicht

# en: f9995213
state-on-start-fires-then-dies = Zündet und stirbt ab

# en: 0c791b1b
state-on-start-runs-only-while-held = Läuft nur, solange der Schlüssel auf START gehalten wird

# en: b38d3a81
state-on-start-keeps-cranking = Anlasser hört nicht auf

# en: bc9bfc12
state-on-start-starts = Springt normal an

# en: 9bfdcd94
observation-engine-turns = Ob der Motor selbst dreht

# en: 06fdbec1
state-engine-turns-normal = Ja, so schnell wie sonst

# en: 4f626bb6
state-engine-turns-slow = Langsam

# en: 7dbe1205
state-engine-turns-part-turn = Ein Stück weit

# en: 1a4ecdf0
state-engine-turns-no = Er dreht nicht

# en: 1c18c6ef
observation-click-sound = Was am Anlasser zu hören ist

# en: c08ebd57
state-click-sound-none = Kein Klacken

# en: a8bed4bf
state-click-sound-faint = Ein leises Klack

# en: 554e6eb2
state-click-sound-loud = Ein lautes Klack

# en: 875c3158
state-click-sound-repeated = Klackt immer wieder

# en: 0982fe21
observation-pattern = Wann es vorkommt

# en: b5fefa23
state-pattern-every-time = Jedes Mal

# en: 32921492
state-pattern-sometimes = Mal ja, mal nein

# en: 39174115
state-pattern-only-hot = Nur heiß

# en: 2e9ff333
state-pattern-only-cold = Nur kalt

# en: 130e8031
state-pattern-only-wet = Nur bei Nässe

# en: 0ba2da31
state-pattern-after-standing = Nur nach langem Stehen

# en: 582e0fb5
observation-lights-on = Licht bei Zündung EIN

# en: 58aa311b
state-lights-on-dead = Gar kein Licht

# en: ea53b1cb
state-lights-on-dim = Trüb

# en: 9e496b1d
state-lights-on-normal = So hell wie immer

# en: e20dce69
observation-lights-at-start = Licht, während der Schlüssel auf START steht

# en: fa98a8e8
state-lights-at-start-stay-bright = Bleibt hell

# en: 746292d8
state-lights-at-start-dim = Wird trüb

# en: de4c4579
state-lights-at-start-go-out = Geht aus

# en: 1ba99ba3
observation-controls-moved = Nachdem alle Hebel einmal bewegt wurden

# en: 41f9d57c
state-controls-moved-no-change = Keine Änderung

# en: b45adc23
state-controls-moved-then-started = Dann sprang sie an

# en: 3818758b
observation-jump-start = Nach der Starthilfe

# en: 3376bd93
state-jump-start-not-tried = Nicht probiert

# en: 5861a0d5
state-jump-start-cured = Sprang an und lief

# en: 42c8a00f
state-jump-start-helped-but-slow = Drehte besser, aber langsam

# en: 12735f70
state-jump-start-ran-then-died = Lief, dann ging sie aus

# en: 41f9d57c
state-jump-start-no-change = Keine Änderung

# en: e8387507
observation-at-machine = Bei der Maschine

# en: 5bf4e376
state-at-machine-yes = Ja, ich stehe daneben

# en: 19b6432a
state-at-machine-can-go = Nein, aber ich kann hingehen

# en: 1ea442a1
state-at-machine-no = Nein

# en: cf945741
state-at-machine-for-someone-else = Ich frage für jemand anderen

# en: cf6b242c
observation-neutral-switch-out-volts = Spannung am Ausgang des Leerlaufschalters bei START

# en: d5a98cdb
state-neutral-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-neutral-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-neutral-switch-out-volts-good = Über 8 V

# en: 717fdbf8
observation-pto-switch-out-volts = Spannung am Ausgang des Zapfwellenschalters bei START

# en: d5a98cdb
state-pto-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-pto-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-pto-switch-out-volts-good = Über 8 V

# en: ac8fdf14
observation-seat-switch-out-volts = Spannung am Ausgang des Sitzschalters bei START

# en: d5a98cdb
state-seat-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-seat-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-seat-switch-out-volts-good = Über 8 V

# en: 61958a0f
observation-clutch-switch-out-volts = Spannung am Ausgang des Kupplungsschalters bei START

# en: d5a98cdb
state-clutch-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-clutch-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-clutch-switch-out-volts-good = Über 8 V

# en: 97ed9a4d
observation-brake-switch-out-volts = Spannung am Ausgang des Bremsschalters bei START

# en: d5a98cdb
state-brake-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-brake-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-brake-switch-out-volts-good = Über 8 V

# en: 56914b8f
observation-stud-start-volts = Spannung am Batteriebolzen des Magnetschalters bei START

# en: e5167a79
state-stud-start-volts-none = Unter 2 V

# en: c7636fe7
state-stud-start-volts-low = 2 bis 8 V

# en: 296270a0
state-stud-start-volts-sags = 8 bis 9,4 V

# en: 6775bc69
state-stud-start-volts-good = Über 9,4 V

# en: 5ce526a6
observation-trigger-start-volts = Spannung am kleinen Anschluss des Magnetschalters bei START

# en: d5a98cdb
state-trigger-start-volts-none = Unter 1 V

# en: 71bfd148
state-trigger-start-volts-weak = 1 bis 8 V

# en: e696f5f4
state-trigger-start-volts-good = Über 8 V

# en: 18cf6746
observation-starter-start-volts = Spannung am Anschluss des Anlassers bei START

# en: d5a98cdb
state-starter-start-volts-none = Unter 1 V

# en: 697b21f0
state-starter-start-volts-low = 1 bis 7,5 V

# en: 92cf7e78
state-starter-start-volts-sags = 7,5 bis 9 V

# en: 8b5ed47f
state-starter-start-volts-good = Über 9 V

# en: cc469923
observation-ground-drop-volts = Spannung vom Motorblock zum Minuspol bei START

# en: caf12bf7
state-ground-drop-volts-good = Unter 0,2 V

# en: 8f094654
state-ground-drop-volts-look-into = 0,2 bis 0,7 V

# en: 0709d83e
state-ground-drop-volts-bad = 0,7 bis 8 V

# en: e696f5f4
state-ground-drop-volts-open = Über 8 V

# en: 6c6ee3da
observation-minus-clamp-drop-volts = Spannung vom Minuspol zu seiner Klemme bei START

# en: 1d273080
state-minus-clamp-drop-volts-good = Unter 0,1 V

# en: 50ab306e
state-minus-clamp-drop-volts-look-into = 0,1 bis 0,3 V

# en: 3769b130
state-minus-clamp-drop-volts-bad = Über 0,3 V

# en: a1ec5de5
observation-plus-clamp-drop-volts = Spannung vom Pluspol zu seiner Klemme bei START

# en: 1d273080
state-plus-clamp-drop-volts-good = Unter 0,1 V

# en: 50ab306e
state-plus-clamp-drop-volts-look-into = 0,1 bis 0,3 V

# en: 3769b130
state-plus-clamp-drop-volts-bad = Über 0,3 V

# en: 4d86fb17
observation-starter-amps = Strom des Anlassers

# en: b17aa2e3
state-starter-amps-none = Unter 20 A

# en: e2afab08
state-starter-amps-low = 20 bis 60 A

# en: 0962c348
state-starter-amps-normal = 60 bis 300 A

# en: a961e304
state-starter-amps-high = Über 300 A

# en: f7cae8cc
observation-battery-rest-volts = Batteriespannung in Ruhe

# en: ca740f0d
state-battery-rest-volts-gone = Unter 9,5 V

# en: 869b9e2c
state-battery-rest-volts-cell-down = 9,5 bis 11 V

# en: d9dffd01
state-battery-rest-volts-flat = 11 bis 12 V

# en: b2ede6c1
state-battery-rest-volts-low = 12 bis 12,4 V

# en: 5ae06f89
state-battery-rest-volts-good = 12,4 bis 12,9 V

# en: e5635adf
state-battery-rest-volts-not-rested = Über 12,9 V

# en: cba50f6e
observation-battery-start-volts = Batteriespannung mit dem Schlüssel auf START

# en: fa4e2267
state-battery-start-volts-collapses = Unter 8 V

# en: f7ed997b
state-battery-start-volts-sags = 8 bis 9,6 V

# en: 38090bfb
state-battery-start-volts-holds = 9,6 bis 11,8 V

# en: 5449ed4b
state-battery-start-volts-no-load = Über 11,8 V

# en: 63966ec4
observation-cell-spread = Säuredichte, höchste minus niedrigste Zelle

# en: 5a89390e
state-cell-spread-even = Unter 0,050

# en: 0ea7662b
state-cell-spread-one-low = 0,050 oder mehr

## Prüfungen

# en: a21c7fe0
check-look-at-air-filter = Luftfilter

# en: 527a001c
check-look-at-air-filter-ask = Machen Sie das Luftfiltergehäuse auf, und sehen Sie hinein. Ist der Filter sauber, schmutzig, oder zu, nass oder angefressen?

# en: 6dae871c
check-look-at-air-filter-how = Schlüssel abziehen. Sehen Sie auch in das Rohr dahinter, ob ein Nest oder ein Lappen drin ist. Ohne Filter nicht laufen lassen.

# en: 2f8a80da
check-look-at-exhaust = Auspufföffnung

# en: 42152fc3
check-look-at-exhaust-ask = Sehen Sie sich das Auspuffende an. Ist es frei, oder ist da ein Nest, Dreck, ein Lappen, oder ist es zerdrückt?

# en: 2b5f62dc
check-look-at-exhaust-how = Motor aus und kalt; nichts hineinstecken.

# en: 3d51bbee
check-read-contactor-out = Ausgang des Schützes

# en: 2c623201
check-read-contactor-out-ask = Wie viel Volt am Ausgangsbolzen des Schützes, Schlüssel auf START?

# en: 8115bf77
verdict-read-contactor-out-passes = Das Schütz gibt den Strom weiter: Kabel zum Anlasser oder der Anlasser.

# en: 21283fba
verdict-read-contactor-out-lossy = Im Schütz oder davor geht Spannung verloren. Mit seinem Batteriebolzen vergleichen.

# en: 86b820f2
verdict-read-contactor-out-open = Das Schütz schließt nicht: kein Befehl, Spule unterbrochen oder Kontakte verbrannt.

# en: 1e85ae1b
check-read-cable-to-earth = Pluskabel gegen Masse

# en: b632dc19
check-read-cable-to-earth-ask = Beide Kabel von der Batterie ab, alles aus. Wie viel Ohm vom Pluskabel zum blanken Motormetall?

# en: c3e25a17
check-read-cable-to-earth-how = Das Kabel nie wieder anklemmen, solange es einen Schluss zeigt. Suchen Sie den Kabelschuh, der anliegt, dann einen Magnetschalter, der nicht losgelassen hat.

# en: 8e6940f5
verdict-read-cable-to-earth-short = Glatter Schluss: Kabelschuh oder Kabel liegt an Metall, oder die Kontakte im Magnetschalter sind geschlossen.

# en: e527237e
verdict-read-cable-to-earth-something-on = Etwas zieht Strom, oder ein Kabel ist blank. Sicherungen eine nach der anderen ziehen.

# en: 5cea7a49
verdict-read-cable-to-earth-clear = Kein Schluss am dicken Kabel.

# en: 9a692dbd
check-ask-spark-at-clamp = Funke am Batteriekabel

# en: 9b9f15ec
check-ask-spark-at-clamp-ask = Wenn in letzter Zeit ein Batteriekabel angeklemmt wurde und alles aus war: Gab es einen Funken?

# en: ed7125d1
check-ask-spark-at-clamp-how = Nur aus der Erinnerung. Nicht noch einmal probieren.

# en: b867b4b7
check-look-at-intake-joint = Verbindung vom Vergaser zum Motor

# en: adb85966
check-look-at-intake-joint-ask = Sind Muttern, Dichtungen und Gummi zwischen Vergaser und Motor fest und heil?

# en: d398e150
check-ask-charge-lamp = Ladelampe

# en: 58cd6f9b
check-ask-charge-lamp-ask = Ging die Ladelampe oder das Batteriezeichen aus, als sie zuletzt lief?

# en: 263f1922
check-look-at-alternator-belt = Keilriemen der Lichtmaschine

# en: 408389a9
check-look-at-alternator-belt-ask = Schlüssel abziehen. Ist der Keilriemen der Lichtmaschine da, stramm und nicht blank?

# en: 53a03dfb
check-look-at-alternator-belt-how = Motor aus und kalt. In der Mitte mit dem Daumen drücken; etwa eine Daumenbreite ist richtig.

# en: c7c22b59
check-read-charging = Ladespannung

# en: f21b0b37
check-read-charging-ask = Wie viel Volt an der Batterie, Motor auf Arbeitsdrehzahl?

# en: 21d4f7ab
check-read-charging-how = Etwa 0,1 V mehr je 10 Grad kälter. Noch einmal mit Licht messen, und vom Gehäuse der Lichtmaschine zum Minuspol: dort ist 0,2 V die Grenze.

# en: 833c7900
verdict-read-charging-charging = Sie lädt.

# en: 9c59ab78
verdict-read-charging-weak = Lädt wenig: Riemen, Verbindungen oder Regler; mit Verbrauchern noch einmal messen.

# en: 6fa5d9f4
verdict-read-charging-none = Lädt nicht: Riemen, Stecker, Erregerkabel, Sicherung, dann Lichtmaschine oder Spule.

# en: 12c0ba30
verdict-read-charging-cold = Bei starkem Frost üblich. Ist es warm, ist es zu viel: Regler oder seine Masse.

# en: fede0436
verdict-read-charging-too-much = Überladen bei jedem Wetter: Regler oder seine Masse.

# en: 1162b1a3
check-look-at-choke = Chokeklappe

# en: 4b90b4a3
check-look-at-choke-ask = Bewegen Sie den Chokehebel, und sehen Sie am Vergaser auf Zugende und Klappe. Geht die Klappe ganz zu und wieder auf?

# en: ec45745b
check-look-at-choke-how = Schlüssel abgezogen, Motor kalt. Oft sieht man sie, wenn der Luftfilterdeckel ab ist; danach wieder drauf.

# en: 2a2dcb2b
check-look-at-joints = Beide Enden beider Kabel

# en: a99d64f2
check-look-at-joints-ask = Sehen Sie sich beide Enden beider Batteriekabel an, auch dort, wo das schwarze am Motor sitzt. Was sehen Sie?

# en: 0ec8a2f0
check-look-at-joints-how = Versuchen Sie, jede Klemme mit der Hand zu drehen, ohne Werkzeug. Wenn es geht, schicken Sie ein Foto von allen vier Enden.

# en: 4a31d216
check-look-at-controls = Alle Hebel und Pedale wie zum Starten

# en: edd109e1
check-look-at-controls-ask = Sehen Sie sich jeden Hebel, jedes Pedal und jeden Schalter an der Maschine an. Steht alles so, wie die Betriebsanleitung es zum Starten sagt?

# en: aa1d91b7
check-look-at-controls-how = Jeden einmal bewegen und zurückstellen; nicht nur hinsehen.

# en: 0cd08b1e
check-look-at-stop-button = Not-Aus-Knopf

# en: 0fb5b2a0
check-look-at-stop-button-ask = Ist der rote Not-Aus-Knopf herausgezogen? Sehen Sie nach, ob es einen zweiten gibt.

# en: ce795f35
check-look-at-bar = Sicherheitsbügel oder Haltebügel

# en: 73a5dd62
check-look-at-bar-ask = Ist beim Starten der Sicherheitsbügel ganz unten oder der Haltebügel gehalten?

# en: c34e444c
check-look-for-bubbles = Luft im Diesel

# en: 2426d9d0
check-look-for-bubbles-ask = Entlüftungsschraube am Filter eine Umdrehung auf, Handpumpe betätigt. Kommen Blasen oder Schaum?

# en: c2606852
check-feel-primer = Handpumpe

# en: 0f505990
check-feel-primer-ask = Drücken Sie die Handpumpe am Kraftstofffilter oder an der Pumpe zwanzigmal. Wird sie fest, oder bleibt sie weich?

# en: 7d2c9e45
check-feel-primer-how = Motor kalt, Schlüssel abgezogen. Es wird nichts geöffnet.

# en: 71b00900
check-ask-other-key = Anderer Schlüssel oder PIN

# en: 3f950e55
check-ask-other-key-ask = Wurde nach einer Minute ohne Schlüssel ein anderer Schlüssel oder noch einmal die PIN probiert?

# en: 428e6cf3
check-read-reader = Auslesegerät

# en: 24ed30fe
check-read-reader-ask = Zündung EIN, Auslesegerät angesteckt. Antwortet das Steuergerät? Jeden Code als SPN und FMI aufschreiben.

# en: 5f56c3c2
check-read-reader-how = FMI 3 ist Spannung zu hoch, 4 zu niedrig, 5 Strom zu klein (offen), 6 zu groß (Schluss), 2 unregelmäßig. SPN 168 ist die Batteriespannung: die zuerst beheben, sie macht weitere Codes.

# en: f2d02652
verdict-read-reader-alive = Das Steuergerät lebt: seinen Codes nachgehen, Batteriespannung zuerst.

# en: 2d28829e
verdict-read-reader-dead = Keine Antwort: Versorgung, Masse oder Sicherung des Steuergeräts, dann der Stecker, dann das Steuergerät selbst.

# en: dcd9356f
check-read-controller-feed = Versorgung des Steuergeräts

# en: f1c2810e
check-read-controller-feed-ask = Wie viel Volt zwischen Plus- und Masse-Pin am Stecker des Steuergeräts, Zündung EIN?

# en: d2aaa59f
check-read-controller-feed-how = Unter Last: Eine Prüflampe über den Pins muss hell brennen.

# en: 9d6c188a
verdict-read-controller-feed-sound = Versorgung gut: Sensoren, Stecker, dann das Steuergerät.

# en: c3f79223
verdict-read-controller-feed-faulty = Versorgung schlecht: Sicherung, Hauptrelais, Masse oder ein Stecker.

# en: 37a6c446
check-see-cylinder-liquid = Flüssigkeit im Zylinder

# en: fcad6fdf
check-see-cylinder-liquid-ask = Kerze oder Düse heraus, Motor langsam mit der Stange gedreht. Kommt Öl, Benzin oder Wasser?

# en: 2740af4f
check-see-cylinder-liquid-how = Lappen über das Loch, Gesicht weg, keine Funken in der Nähe. Es kann ein Liter kommen.

# en: 04f7ac15
check-ask-oil-grade = Sorte des Motoröls

# en: 06947064
check-ask-oil-grade-ask = Welches Öl ist im Motor? Die Zahl vor dem W auf dem Kanister, oder eine einzelne Zahl.

# en: e655c132
verdict-ask-oil-grade-fits-frost = 0W dreht bis -35, 5W bis -30 Grad: nicht zu dick.

# en: ce900037
verdict-ask-oil-grade-to-minus-20 = 10W dreht bis -25, 15W bis -20 Grad; darunter ist es zu dick.

# en: 8dfefeaf
verdict-ask-oil-grade-too-thick = 20W dreht bis -15, 25W bis -10, ein Einbereichsöl bei Frost kaum noch: zu dick für einen kalten Morgen.

# en: 2894f70d
check-turn-by-hand = Motor mit der Stange drehen

# en: 1644781c
check-turn-by-hand-ask = Schlüssel abgezogen, Kerzenkabel oder Abstellung gesichert. Lässt sich der Motor mit einer Stange an der Kurbelwelle drehen?

# en: 27312686
check-look-at-oil = Öl am Peilstab

# en: d84d2f43
check-look-at-oil-ask = Ziehen Sie den Ölpeilstab. Wie sieht das Öl aus, und wie hoch steht es?

# en: d7a0f0fd
check-look-at-oil-how = Motor kalt, Maschine gerade. Abwischen, hineinschieben, wieder ziehen.

# en: 5e86e57e
check-see-drive-turns = Messer oder Zapfwelle drehen mit

# en: d1bf4afe
check-see-drive-turns-ask = Als der Anlasser den Motor bei ausgeschalteter Zapfwelle drehte: Drehten Messer oder Zapfwelle mit?

# en: 686ba108
check-take-load-off = Riemen und Kupplungen ab

# en: 95486e87
check-take-load-off-ask = Wenn Riemen und Kupplungen einzeln abgenommen sind: Dreht der Motor mit der Stange frei?

# en: 66a1329c
check-look-at-belts = Riemen und Riemenscheiben

# en: 375b0632
check-look-at-belts-ask = Sehen Sie sich bei stehendem Motor die Riemen an. Ist einer verbrannt oder blank, oder hat er beim Starten gequietscht oder geraucht?

# en: 3e2ffd59
check-look-at-tap = Kraftstoffhahn

# en: 721f673b
check-look-at-tap-ask = Suchen Sie den Kraftstoffhahn unter dem Tank oder am Filter. Ist er ganz offen?

# en: 602f6878
check-look-at-tap-how = Hebel in Richtung der Leitung heißt offen. Viele Maschinen haben einen, an den keiner denkt.

# en: 67e786ae
check-hear-fuel-valve = Abschaltventil am Vergaser

# en: 8092c2de
check-hear-fuel-valve-ask = Drehen Sie den Schlüssel ein paar Mal von AUS auf EIN. Klackt etwas am Vergaser?

# en: 30fd6253
check-hear-fuel-valve-how = Den Schlüssel nicht auf START drehen. Ein Zweiter kann am Motor horchen, solange sich nichts dreht.

# en: fe086ad2
check-read-fuel-valve = Spannung am Abschaltventil

# en: dd3091de
check-read-fuel-valve-ask = Wie viel Volt zwischen dem Kabel des Abschaltventils und dem Motorblock, Zündung EIN?

# en: be109801
verdict-read-fuel-valve-feed-bad = Erst Sicherung, Kabel, Stecker oder Schalter: Auch ein neues Ventil ginge nicht auf.

# en: 95af4148
verdict-read-fuel-valve-valve-bad = Es hat Strom: Klackt es jetzt nicht, liegt es am Ventil.

# en: 1b8d01b3
check-look-at-fuse = Hauptsicherung und ihr Halter

# en: 6d3673c7
check-look-at-fuse-ask = Suchen Sie die Hauptsicherung nahe der Batterie oder dem Anlasser. Ist ihr Draht ganz, sitzt sie fest und sauber?

# en: bd3b8f74
check-look-at-fuse-how = Schlüssel abziehen. Sicherung ziehen, Draht und beide Kontakte ansehen, wieder hineindrücken. Eine neue nur mit derselben Zahl.

# en: 7e421c38
check-ask-fuse-again = Was eine neue Sicherung machte

# en: fbdfcf7e
check-ask-fuse-again-ask = Wurde eine neue Sicherung eingesetzt, und hat sie gehalten?

# en: 553dff03
check-ask-fuse-again-how = Sagen Sie nur, was war. Nicht eine Sicherung nach der anderen hineinstecken.

# en: 48b33a3d
check-read-fuse-out = Hinter der Hauptsicherung

# en: 2e75816d
check-read-fuse-out-ask = Wie viel Volt hinter der Hauptsicherung, Zündung EIN?

# en: f3b2d80b
check-read-fuse-out-how = Schwarz an den Minuspol, Licht an, damit etwas zieht. Schmelzdrähte am Anlasser zählen auch als Sicherung.

# en: 3ba683bc
verdict-read-fuse-out-sound = Die Sicherung gibt die Batteriespannung weiter.

# en: 654b5650
verdict-read-fuse-out-lossy = Vor dem Sicherungshalter oder darin geht Spannung verloren.

# en: 246531ed
verdict-read-fuse-out-open = Keine Versorgung: Sicherung, Schmelzdraht, Halter oder das Kabel davor.

# en: 6ad02267
check-ask-gas-bottle = Noch Gas da

# en: 84866d0d
check-ask-gas-bottle-ask = Wie viel Gas ist noch da? Vergleichen Sie das Gewicht der Flasche oder die Anzeige mit einer vollen.

# en: c2e62f9b
check-ask-gas-bottle-how = Keine Flamme, nicht rauchen. Wenn Sie Gas riechen: Flasche zu, weggehen und anrufen.

# en: 2d4da357
check-look-at-gas-valve = Ventil der Gasflasche

# en: 4f7fa2c7
check-look-at-gas-valve-ask = Ist das Ventil der Flasche ganz offen, und der Hahn an der Maschine auch?

# en: 1915abe9
check-look-at-gas-valve-how = Es geht links herum auf. Zu schnell geöffnet, machen manche Flaschen von selbst zu: zudrehen und langsam öffnen.

# en: 26302a33
check-look-at-gas-frost = Eis am Regler

# en: 2b5cc8d0
check-look-at-gas-frost-ask = Ist der Gasregler oder die Flasche weiß vereist?

# en: 59baccbe
check-hear-gas-lock = Gas-Absperrventil

# en: a4766ea1
check-hear-gas-lock-ask = Drehen Sie den Schlüssel ein paar Mal von AUS auf EIN. Klackt etwas am Gasventil?

# en: 4c64be82
check-read-gas-pressure = Gasdruck

# en: 90e23232
check-read-gas-pressure-ask = Ist der Gasdruck hinter dem Regler beim Durchdrehen so, wie der Hersteller ihn will?

# en: 451d2dee
check-read-gas-pressure-how = Nur mit Gas-Ausbildung. Lecksuchspray auf jede Verbindung, die offen war.

# en: db252594
check-hand-back-bridges = Überbrückungen weg, Stecker drauf

# en: 0e4a0a03
check-hand-back-bridges-ask = Sind alle Prüfkabel und Notkabel weg, alle Stecker drauf, alle Abdeckungen wieder dran?

# en: ac83c199
verdict-hand-back-bridges-open = Herausnehmen, dann die anderen Prüfungen machen.

# en: a694d24f
check-hand-back-gear = Dreht nicht mit eingelegtem Gang

# en: db1eaf57
check-hand-back-gear-ask = Räder verkeilt, niemand in der Nähe, nach Betriebsanleitung. Gang eingelegt, Schlüssel kurz auf START. Bleibt der Anlasser still?

# en: 3b617a38
verdict-hand-back-gear-unsafe = So darf sie nicht zurück: Leerlaufschalter, seine Einstellung und Kabel.

# en: da72ffe9
check-hand-back-pto = Dreht nicht mit eingeschalteter Zapfwelle

# en: 1ab1b00b
check-hand-back-pto-ask = Niemand in der Nähe, nichts angehängt, nach Betriebsanleitung. Zapfwelle oder Mähwerk eingeschaltet, Schlüssel kurz auf START. Bleibt der Anlasser still?

# en: 34fd7b3a
verdict-hand-back-pto-unsafe = So darf sie nicht zurück: Zapfwellenschalter, seine Einstellung und Kabel.

# en: 9519f8b4
check-hand-back-seat = Dreht nicht ohne jemanden auf dem Sitz

# en: ea94ba43
check-hand-back-seat-ask = Räder verkeilt, Antrieb getrennt, nach Betriebsanleitung. Vom Sitz aufstehen, Füße auf der Plattform, Schlüssel kurz auf START. Bleibt der Anlasser still?

# en: 54703530
check-hand-back-seat-how = Manche Maschinen drehen absichtlich auch ohne Fahrer, wenn sie im Leerlauf sind und die Bremse angezogen ist: nach Betriebsanleitung gehen.

# en: cb4c7d80
verdict-hand-back-seat-unsafe = Wenn die Betriebsanleitung es nicht erlaubt, darf sie so nicht zurück: Sitzschalter und Kabel.

# en: 32e76e3a
check-hand-back-clutch = Dreht nicht ohne getretene Kupplung

# en: 37e77334
check-hand-back-clutch-ask = Räder verkeilt, Leerlauf, nach Betriebsanleitung. Kupplung losgelassen, Schlüssel kurz auf START. Bleibt der Anlasser still?

# en: 2a623db6
verdict-hand-back-clutch-unsafe = Wenn die Betriebsanleitung es nicht erlaubt, darf sie so nicht zurück: Kupplungsschalter und seine Einstellung.

# en: d2ad6dbd
check-hand-back-brake = Dreht nicht mit gelöster Bremse

# en: 1aa32a01
check-hand-back-brake-ask = Räder verkeilt, Leerlauf, nach Betriebsanleitung. Bremse gelöst, Schlüssel kurz auf START. Bleibt der Anlasser still?

# en: e6c10b3f
verdict-hand-back-brake-unsafe = Wenn die Betriebsanleitung es nicht erlaubt, darf sie so nicht zurück: Bremsschalter und seine Einstellung.

# en: 28ea5faf
check-hand-back-three-starts = Drei Starts, einer heiß

# en: c8e0a088
check-hand-back-three-starts-ask = Springt sie vom Sitz aus dreimal hintereinander an, davon einmal heiß?

# en: cc657aa7
check-hand-back-three-starts-how = Zwischen kalten Versuchen zwei Minuten Pause; im Freien laufen lassen.

# en: 5c42a6d4
verdict-hand-back-three-starts-again = Noch nicht behoben: messen, solange der Fehler da ist.

# en: c58d3953
check-hand-back-charging = Ladespannung

# en: 3c336e25
check-hand-back-charging-ask = Motor auf Arbeitsdrehzahl, Licht an, Messgerät an den Polen. Liegt die Ladespannung im guten Bereich?

# en: 69cb28e9
verdict-hand-back-charging-look = Die Batterie wäre bald wieder leer oder ausgekocht: erst das Laden in Ordnung bringen.

# en: 25a58883
check-hand-back-why-flat = Warum die Batterie leer war

# en: a6d79952
check-hand-back-why-flat-ask = Wenn die Batterie leer war: Weiß man, warum? Lange gestanden, etwas angelassen, nicht geladen, Ruhestrom, schlechte Klemme?

# en: 75e31fb5
verdict-hand-back-why-flat-again = Ladespannung und Ruhestrom messen, sonst kommt es wieder.

# en: d428b0f7
check-see-points = Unterbrecherkontakte

# en: 3bec3a1d
check-see-points-ask = Kappe ab. Sind die Kontakte sauber und blank, und gehen sie auf und zu, wenn der Motor dreht?

# en: b9093f17
check-see-points-how = Nach langem Stehen sind die Kontakte oft nur belegt; ein Streifen saubere Pappe dazwischen kann reichen.

# en: 33a7c8d3
check-see-distributor = Verteilerkappe und Verteilerfinger

# en: bf119806
check-see-distributor-ask = Sind Kappe, Finger und Schleifkohle sauber, trocken, ohne Risse, Grünspan oder Rost?

# en: 75b0ddd0
check-hear-impulse = Schnapper am Magnetzünder

# en: fc9a7100
check-hear-impulse-ask = Hat der Magnetzünder beim Drehen wie sonst ein- oder zweimal je Umdrehung geschnappt oder geklackt?

# en: 0038a0e1
check-see-spark-kill-wire-off = Funke ohne Abstellkabel

# en: d30723ce
check-see-spark-kill-wire-off-ask = Abstellkabel an der Spule ab, Prüfer zwischen Kabel und Kerze. Springt beim Durchdrehen ein starker Funke?

# en: f85f22f5
check-see-spark-kill-wire-off-how = Bereit sein, mit dem Choke oder am Kraftstoffhahn abzustellen: Der Schlüssel stellt den Motor jetzt nicht ab. Kabel danach wieder anstecken.

# en: acc4f420
verdict-see-spark-kill-wire-off-wire-guilty = Die Spule ist gut: Abstellkabel, Zündschloss oder ein Sicherheitsschalter nimmt den Funken weg.

# en: e4a5228a
verdict-see-spark-kill-wire-off-coil-guilty = Immer noch kein Funke: Spule, ihr Luftspalt, Kontakte oder Magnete.

# en: bfd35f2a
check-read-kill-wire = Abstellkabel gegen Masse

# en: f415d125
check-read-kill-wire-ask = Abstellkabel an der Spule ab, Messgerät auf Ohm gegen Masse, Zündung EIN, jemand auf dem Sitz. Offen, an Masse, oder wechselt es mit einem Schalter?

# en: a8b34668
check-read-kill-wire-how = Sitz-, Mähwerk- und Bremsschalter einzeln betätigen, und nichts abziehen, was dann ab bleibt.

# en: cfc45281
check-look-at-lever-cable = Seilzug und Stoppschalter des Haltebügels

# en: 1530de2d
check-look-at-lever-cable-ask = Haltebügel halten, nicht am Startseil ziehen. Zieht sein Seilzug Bremse und Stoppschalter am Motor ganz herüber?

# en: 22cd9f46
check-look-at-lever-cable-how = Nur schauen, Hände und Füße weg. Mit dem Messgerät: Bei gehaltenem Bügel darf das Abstellkabel keine Verbindung zur Masse haben.

# en: ac1de531
verdict-look-at-lever-cable-works = Bügel, Seilzug und Stoppschalter tun das Ihre.

# en: 6bf62fa1
verdict-look-at-lever-cable-guilty = Hier wird der Funke weggenommen: Seilzug locker, ausgehängt oder gerissen, oder der Schalter klemmt.

# en: 46f383b6
check-ask-engine-switch = Schalter am Motor selbst

# en: d8265b8b
check-ask-engine-switch-ask = Gibt es einen Schalter oder Hebel am Motor oder Holm mit ON/OFF, RUN/STOP? Wie steht er?

# en: 441e51d0
check-read-coil-feed = Versorgung der Spule

# en: caa29d8d
check-read-coil-feed-ask = Wie viel Volt zwischen dem Versorgungsanschluss der Spule und dem Block, Zündung EIN, Kontakte geschlossen?

# en: 6ade706e
check-read-coil-feed-how = Dann noch einmal mit dem Schlüssel auf START: Manche Spulen bekommen dann über ein anderes Kabel Strom.

# en: 02eefe0b
check-see-flywheel-key = Keil im Schwungrad

# en: 670f5dcd
check-see-flywheel-key-ask = Schwungradmutter ab. Stehen die Nuten von Schwungrad und Kurbelwelle übereinander, und ist der Keil ganz?

# en: 586a4420
check-see-lead-order = Reihenfolge der Kerzenkabel

# en: 271a066e
check-see-lead-order-ask = Kabel nach Zündfolge, Zündmarken am Kompressionstakt von Zylinder eins übereinander. Richtig?

# en: 485a5d8d
check-see-spark = Funke mit dem Prüfer

# en: 972e8ba8
check-see-spark-ask = Prüfer zwischen Kabel und Kerze, Kerze bleibt drin. Springt beim Durchdrehen ein starker Funke?

# en: a6d9e3c9
check-see-spark-how = Schlüssel, Stoppschalter und Startsperren wie im Lauf. Mindestens 4 mm Strecke; eine Kerze, die am Block liegt, zeigt weniger, als sie unter Druck können muss.

# en: 7bf9eac6
verdict-see-spark-sparks = Die Zündung macht Funken: Kraftstoff, Zündzeitpunkt und Kompression kommen als Nächstes.

# en: 4c36c6fa
verdict-see-spark-no-spark = Als Nächstes das Abstellkabel ab; erst dann Kerze, Kontakte und Spule.

# en: 9b1d14ee
check-see-plug = Die Kerze selbst

# en: 8f63812c
check-see-plug-ask = Ist die Kerze nach zehn Sekunden Durchdrehen trocken, nass oder verrußt?

# en: 428cb482
verdict-see-plug-starved = Es kommt kein Kraftstoff hinein: dem Kraftstoff nachgehen.

# en: 780210ed
verdict-see-plug-wetted = Kraftstoff kommt hinein, verbrennt aber nicht: Funke, abgesoffen, schlechtes Benzin, Kompression.

# en: 7ec00661
verdict-see-plug-fouled = Zu fett oder verölt: Luftfilter, Choke, Ringe; erst eine neue Kerze.

# en: e2b12e09
check-look-at-plug-cap = Kerzenstecker

# en: fbcc34f5
check-look-at-plug-cap-ask = Sitzt der Stecker des dicken Kabels auf jeder Kerze ganz drauf, ohne Riss und ohne Fraßstelle?

# en: f2010708
check-look-at-plug-cap-how = Schlüssel abgezogen, Motor kalt. Ansehen und auf den Stecker drücken; nichts abziehen.

# en: 1b8559d9
check-spark-with-new-plug = Funke mit neuer Kerze

# en: 7c57e7a6
check-spark-with-new-plug-ask = Eine neue Kerze aus dem Wagen am Kabel, Gewinde an blankem Metall, weg vom Kerzenloch. Ist der Funke jetzt stark?

# en: be2c56a5
check-look-at-switch-plugs = Sicherheitsschalter, ihre Stecker und Kabel

# en: eeee899b
check-look-at-switch-plugs-ask = Sehen Sie sich die Sicherheitsschalter unter dem Sitz, an Pedalen, Hebeln und Getriebe an. Ist ein Stecker ab, ein Kabel angefressen, steckt Dreck oder Gras drin?

# en: b56ea837
check-look-at-switch-plugs-how = Schlüssel abgezogen. Nur ansehen, nichts abziehen. Auch dort, wo zuletzt jemand gearbeitet hat.

# en: 37805a76
check-read-key-feed = Versorgung des Zündschlosses

# en: 50715d79
check-read-key-feed-ask = Wie viel Volt am Eingang des Zündschlosses, Zündung EIN?

# en: c3932337
verdict-read-key-feed-sound = Das Zündschloss bekommt Strom; ansehen, was herauskommt.

# en: c407d6ff
verdict-read-key-feed-lossy = Unterwegs geht Spannung verloren: Sicherungshalter, Stecker, Zuleitung oder die kleine Masse.

# en: 77ee176b
verdict-read-key-feed-open = Keine Versorgung: Sicherung, Trennschalter, Stecker oder Kabel vor dem Zündschloss.

# en: 8f77eb0f
check-read-key-run = Ausgang des Zündschlosses, Zündung EIN

# en: f5187982
check-read-key-run-ask = Wie viel Volt am Ausgang EIN des Zündschlosses, Zündung EIN?

# en: e4bc68f2
check-read-key-run-how = Am Schloss selbst, dann auf der Kabelseite des Steckers.

# en: 8fe2b2cb
verdict-read-key-run-sound = Das Schloss gibt den Strom weiter; sind die Armaturen tot, fehlt der Strom weiter hinten.

# en: b223fec4
verdict-read-key-run-faulty = Bekommt Strom, gibt aber wenig oder nichts weiter: Zündschloss oder sein Stecker.

# en: a72147b1
check-read-key-start = Volt am Anschluss START des Zündschlosses

# en: a95e1657
check-read-key-start-ask = Wie viel Volt am Anschluss START des Zündschlosses, Schlüssel auf START?

# en: d9e7bfd2
verdict-read-key-start-sound = Das Zündschloss gibt den Startbefehl; ihm durch die Sicherheitsschalter nachgehen.

# en: 47a0a76d
verdict-read-key-start-lossy = Verbrannter Kontakt im Zündschloss, oder schwache Versorgung davor.

# en: 99c76bf4
verdict-read-key-start-open = Kein Befehl. Ist die Versorgung gut, liegt es am Schloss; nicht kaufen, bevor die Versorgung gemessen ist.

# en: 9772ed92
check-see-key-plug = Stecker hinter dem Zündschloss

# en: 9907c13b
check-see-key-plug-ask = Sind Stecker und Kabel hinter dem Zündschloss sauber, fest und nicht verbrannt?

# en: 76650bf4
check-ask-key-spring = Schlüssel auf START losgelassen

# en: f614ae85
check-ask-key-spring-ask = Wenn Sie den Schlüssel auf START loslassen: Springt er von selbst zurück?

# en: 2410d42a
check-see-preheat-lamp = Vorglühlampe

# en: 94d898b5
check-see-preheat-lamp-ask = Schlüssel auf Vorglühen oder EIN. Geht die Glühlampe mit der Wendel an und nach ein paar Sekunden wieder aus?

# en: a081828d
check-ask-preheat-time = Wie lange vorgeglüht wurde

# en: 130ae791
check-ask-preheat-time-ask = Wie lange wurde vor dem letzten Versuch vorgeglüht, verglichen mit anderen kalten Morgen?

# en: 4f283d62
check-read-glow = Strom der Glühkerzen

# en: 2735c3a1
check-read-glow-ask = Wie viel Ampere fließen beim Vorglühen zu den Glühkerzen?

# en: fb022034
check-read-glow-how = Acht bis neun Ampere je Kerze, wenn warm; am Anfang etwas mehr. Höchstens eine halbe Minute.

# en: 23d180e4
verdict-read-glow-all-glow = Acht bis neun Ampere mal Zahl der Kerzen: Vorglühen geht.

# en: 9ae413dc
verdict-read-glow-some-dead = Eine offene Kerze von dreien nimmt ein Drittel weg: jede messen, 1,0 bis 1,5 Ohm, Kabel ab.

# en: 258d685b
verdict-read-glow-no-feed = Kein Strom: Relais, Sicherung, Zeitgerät oder Schiene, erst dann eine Kerze.

# en: f52be2dc
check-read-glow-amps = Strom je Glühkerze

# en: 8a805c01
check-read-glow-amps-ask = Wie viel Ampere in die Glühschiene beim Vorglühen, geteilt durch die Zahl der Kerzen?

# en: 7e2f3c05
check-read-glow-amps-how = Zange um die Zuleitung der Schiene, nach fünf Sekunden ablesen, höchstens eine halbe Minute.

# en: d8488cab
verdict-read-glow-amps-works = 8 bis 9 A je Kerze (kalt 12 A): Vorglühen geht.

# en: 3e67a665
verdict-read-glow-amps-one-of-many = Bei sechs Kerzen kann eine tot sein: jede messen, Kabel ab.

# en: 4d219253
verdict-read-glow-amps-dead-plugs = Mindestens eine Kerze ist offen: jede messen, 1,0 bis 1,5 Ohm, Kabel ab.

# en: 258d685b
verdict-read-glow-amps-no-feed = Kein Strom: Relais, Sicherung, Zeitgerät oder Schiene, erst dann eine Kerze.

# en: 06849c4e
check-read-glow-rail = Spannung an der Glühschiene

# en: 74de0743
check-read-glow-rail-ask = Wie viel Volt zwischen Glühschiene und Block beim Vorglühen?

# en: 3f3f9abb
check-see-hoses = Verlauf der Kraftstoffschläuche

# en: 73109c40
check-see-hoses-ask = Verfolgen Sie Vor- und Rücklauf vom Tank aus. Geht jeder Schlauch dahin, wo er hingehört, ohne Knick, Filter und Pumpe in Pfeilrichtung?

# en: 33159304
check-read-relay-out = Ausgang des Startrelais

# en: c0fcd284
check-read-relay-out-ask = Wie viel Volt am Ausgang des Startrelais, Schlüssel auf START?

# en: 8a4ab9c5
verdict-read-relay-out-passes = Das Relais gibt den Befehl weiter: Kabel zum Magnetschalter oder der Magnetschalter.

# en: 8a9f7b02
verdict-read-relay-out-lossy = Relaiskontakt verbrannt, oder schwache Versorgung dorthin.

# en: 03402328
verdict-read-relay-out-open = Relais nicht geschaltet oder tot: erst die Spulenseite messen, dann eins kaufen.

# en: 2e42150d
check-read-oil-switch = Ölschalter

# en: 3f924779
check-read-oil-switch-ask = Öl voll, Maschine gerade, Kabel vom Ölschalter ab. Zeigt der Schalter trotzdem Verbindung zur Masse?

# en: 62e0d0c8
check-see-level = Wie die Maschine steht

# en: e604fac8
check-see-level-ask = Steht der Motor ungefähr gerade?

# en: 1a5d1d74
check-see-lit-key-out = Lampen bei abgezogenem Schlüssel

# en: 6c515d99
check-see-lit-key-out-ask = Schlüssel abgezogen, Batterie an. Ist noch eine Lampe, Anzeige oder Pumpe an? Wenn es geht, im Dunkeln nachsehen.

# en: 9908b25c
check-read-draw = Strom, wenn alles aus ist

# en: c38ebf43
check-read-draw-ask = Wie viel Strom fließt aus der Batterie, wenn alles aus ist?

# en: 028cc435
check-read-draw-how = Messgerät auf 10 A zwischen Minuspol und Klemme, zehn Minuten nachdem alles schläft. Mit dem Messgerät dazwischen nicht den Schlüssel drehen.

# en: cc3bdfdc
verdict-read-draw-quiet = Nichts zieht. Wird die Batterie trotzdem leer, verliert sie die Ladung selbst: laden und unter Last prüfen.

# en: ded090e4
verdict-read-draw-some = Hier sind die Quellen uneins: viel für eine einfache Maschine, üblich, wo Elektronik wach bleibt. Es macht eine Batterie in Wochen leer.

# en: 2e499164
verdict-read-draw-much = Zu viel: Sicherungen einzeln ziehen, dann das Kabel der Lichtmaschine.

# en: 32744136
check-read-battery-alone = Batterie über Nacht allein

# en: 97c72336
check-read-battery-alone-ask = Geladen, eine Stunde geruht, dann eine Nacht mit abgenommenem Kabel. Bleiben die Volt an den Polen, oder fallen sie um 0,2 V oder mehr?

# en: d4d2b7cc
check-read-battery-alone-how = Zweimal messen, am Abend und am nächsten Tag, bei etwa gleicher Wärme. Ein Wert gleich nach dem Laden zählt nicht.

# en: 47b415c5
verdict-read-battery-alone-holds = Die Batterie hält ihre Ladung: Etwas an der Maschine zieht Strom, oder sie wird nicht geladen.

# en: 8ff3c245
verdict-read-battery-alone-loses = Die Batterie verliert die Ladung selbst. Erneuern; nach einem Verbraucher muss niemand suchen.

# en: 53056509
check-find-draw-circuit = Welcher Stromkreis zieht

# en: e21522c1
check-find-draw-circuit-ask = Amperemeter dazwischen: Sinkt der Strom, wenn eine Sicherung gezogen wird, oder erst, wenn das Kabel der Lichtmaschine ab ist?

# en: 393cfc89
check-find-draw-circuit-how = Batteriemasse ab, solange das Kabel der Lichtmaschine gelöst wird, dann über das Messgerät wieder dran.

# en: ede6387f
check-look-at-wires = Aussehen der Kabel

# en: 09f07aef
check-look-at-wires-ask = Schlüssel abgezogen, Haube auf. Sehen Sie an den Kabeln entlang: angefressene oder blanke, ein Nest, verbrannte Stellen, grüne Stecker, ein Stecker ab?

# en: 49464595
check-look-at-wires-how = Nur ansehen, nichts Heißes anfassen. Wenn Nest oder Kot da ist: bitte sagen.

# en: 95afdc99
check-see-teeth = Zähne von Ritzel und Zahnkranz

# en: f331d81f
check-see-teeth-ask = Anlasser ab. Sind die Zähne von Ritzel und Zahnkranz rundum gut?

# en: 3db3af10
check-see-teeth-how = Motor mit der Stange drehen, Schlüssel abgezogen, und den ganzen Kranz ansehen.

# en: 382a6873
check-see-brushes = Kohlen und Kollektor

# en: 13d580d7
check-see-brushes-ask = Anlasser offen. Sind die Kohlen lang genug und frei, der Kollektor sauber und nicht verbrannt?

# en: 5981bebd
check-hear-stop-valve = Abstellmagnet

# en: 14432573
check-hear-stop-valve-ask = Drehen Sie den Schlüssel ein paar Mal von AUS auf EIN. Klackt etwas an der Einspritzpumpe?

# en: 30fd6253
check-hear-stop-valve-how = Den Schlüssel nicht auf START drehen. Ein Zweiter kann am Motor horchen, solange sich nichts dreht.

# en: 9524546e
check-look-at-stop-knob = Abstellzug

# en: e315e846
check-look-at-stop-knob-ask = Ist der Abstellzug oder Abstellhebel ganz hineingeschoben?

# en: f45b1c33
check-look-at-stop-knob-how = Einmal herausziehen und mit der flachen Hand hineindrücken.

# en: ff43e644
check-look-at-stop-lever = Abstellhebel an der Pumpe

# en: 363f6b68
check-look-at-stop-lever-ask = Zündung EIN, Zug drin. Steht der Abstellhebel oder Stößel an der Einspritzpumpe auf Lauf?

# en: 945e7596
check-read-stop-feed = Versorgung des Abstellmagneten

# en: 60139fa4
check-read-stop-feed-ask = Am Stecker des Abstellmagneten, Zündung EIN, dann START: Ist Spannung da, wie die Schaltung sie will?

# en: e9b234a5
check-read-stop-feed-how = Läuft mit Strom: Batteriespannung bei EIN, bei manchen ein zweites Kabel nur bei START. Stoppt mit Strom: Spannung nur beim Abstellen.

# en: 23101a30
verdict-read-stop-feed-solenoid-bad = Versorgt, wie es sein soll: Bewegt er sich nicht, liegt es am Magneten oder seinem Gestänge.

# en: 48aee821
verdict-read-stop-feed-feed-bad = Erst Sicherung, Relais, Zeitglied oder Kabel: Auch ein neuer Magnet würde sich nicht bewegen.

# en: 463c7eff
check-read-link = Verbindung zwischen den Batterien

# en: a67f7734
check-read-link-ask = Wie viel Volt entlang der Verbindung zwischen den beiden Batterien, von Pol zu Pol, Schlüssel auf START?

# en: 61e7a1ac
verdict-read-link-sound = Verbindung gut.

# en: f10a57f5
verdict-read-link-between = Verbindung säubern und festziehen, dann noch einmal messen.

# en: dcda22f7
verdict-read-link-faulty = Die Verbindung zwischen den Batterien ist schlecht.

# en: 9aeb2767
check-read-battery-difference = Die zwei Batterien im Vergleich

# en: c8605934
check-read-battery-difference-ask = Verbindung ab, beide in Ruhe. Wie viel Volt zeigt die eine mehr als die andere?

# en: 097b65c2
check-read-battery-difference-how = Dann die schwächere allein unter Last prüfen. Sind beide gleich alt, beide zusammen erneuern.

# en: 63f564ee
verdict-read-battery-difference-alike = In Ruhe gleich; beide müssen noch unter Last geprüft werden.

# en: 0f3e2d28
verdict-read-battery-difference-differ = Eine zieht die andere herunter: jede für sich laden und prüfen.

# en: ca08c4e6
check-read-isolator = Trennschalter beim Durchdrehen

# en: da701cb1
check-read-isolator-ask = Wie viel Volt von einem Bolzen des Trennschalters zum anderen, Schlüssel auf START?

# en: 3a6bcc7b
verdict-read-isolator-sound = Der Trennschalter lässt den Strom durch.

# en: 553b44cf
verdict-read-isolator-between = Hier sind die Quellen uneins: Kabelschuhe säubern und festziehen, dann noch einmal messen.

# en: 1a42cffa
verdict-read-isolator-faulty = Trennschalter aus, oder seine Kontakte oder Kabelschuhe schlecht.

# en: 6e62da62
check-ask-battery-kind = Blei oder Lithium

# en: e149f25b
check-ask-battery-kind-ask = Ist es eine übliche Bleibatterie, oder eine leichte mit Aufdruck Li, Lithium oder LiFePO4?

# en: 416d07d2
check-read-compression-lowest = Niedrigste Kompression eines kleinen Diesels

# en: 571c3475
check-read-compression-lowest-ask = Niedrigste Kompression aller Zylinder, in bar, Batterie voll, Gas ganz auf?

# en: 099256a5
check-read-compression-lowest-how = Mit dem Wert des Motors vergleichen, wenn die Betriebsanleitung einen nennt. 1 kgf/cm2 sind 0,98 bar, 100 psi sind 6,9 bar.

# en: 5b02b19b
verdict-read-compression-lowest-under-limit = Unter der Grenze kleiner Diesel (25,5 bis 26 bar): kalt springt er kaum an.

# en: 743d4731
verdict-read-compression-lowest-near-limit = An der Grenze sind die Hersteller uneins: mit dem Handbuch vergleichen, Unterschied und Anlassdrehzahl beachten.

# en: aec9f2f0
verdict-read-compression-lowest-seals = Reicht zum Zünden: nach Kraftstoff und Wärme sehen.

# en: d3383a18
check-read-compression-spread = Unterschied zwischen den Zylindern

# en: 877f8e48
check-read-compression-spread-ask = Höchste minus niedrigste Kompression, in bar?

# en: 8600577c
verdict-read-compression-spread-alike = Gleich: sind alle niedrig, dann Ringe, oder es wird zu langsam gedreht.

# en: 42867bad
verdict-read-compression-spread-doubtful = Zwischen den Grenzen der Hersteller (2,45 und 2,9 bar): noch einmal messen.

# en: 2b024b4e
verdict-read-compression-spread-one-out = Ein Zylinder fällt heraus: ein Ventil oder die Kopfdichtung dort.

# en: a8825915
check-see-timing-marks = Steuermarken

# en: 5b031594
check-see-timing-marks-ask = Deckel ab. Stehen die Marken von Nockenwelle, Kurbelwelle und Einspritzpumpe übereinander?

# en: 9bdce74c
check-hear-cranking = Klang beim Durchdrehen

# en: 4ed8cfd3
check-hear-cranking-ask = Wenn er dreht: Klingt es wie immer, schneller und leichter als sonst, oder fehlt ein Takt?

# en: 278b1b2a
check-read-compression = Kompression

# en: a5dbfcda
check-read-compression-ask = Liegt die Kompression in der Grenze des Herstellers, und der Unterschied zwischen den Zylindern auch?

# en: 4c3f5d75
check-read-compression-how = Batterie voll, Gas ganz auf, alle Kerzen heraus. Kleine Diesel etwa 31 bar, Grenze 25,5, Unterschied 2,5; ein Dekompressor macht den Wert eines Einzylinder-Benziners irreführend.

# en: ca133e73
verdict-read-compression-seals = Er ist dicht: noch einmal nach Kraftstoff, Funke oder Wärme sehen.

# en: e605bdf0
verdict-read-compression-one-cylinder = Mehr als etwa 10 Prozent oder 2,5 bar zwischen den Zylindern: ein Ventil oder die Kopfdichtung dort.

# en: 84a1b343
verdict-read-compression-all-low = Überall unter der Grenze: Ringe, oder eine Batterie, die zum Beurteilen zu langsam dreht.

# en: 937c3e0f
check-read-compression-with-oil = Zweite Messung mit Öl

# en: bdfdfc19
check-read-compression-with-oil-ask = Ein Teelöffel Öl in den schwachen Zylinder und noch einmal. Steigt die Kompression deutlich?

# en: 5c6c53d4
check-read-compression-with-oil-how = Den ganzen Teelöffel nur beim Benziner; der kleine Brennraum eines Diesels verträgt weniger. Steigt sie: Ringe. Bleibt sie: Ventil oder Kopfdichtung.

# en: 85320370
check-read-leak-down = Druckverlusttest

# en: da1df5c2
check-read-leak-down-ask = Zylinder auf oberem Totpunkt unter Luft. Wo zischt es?

# en: 1b7e1553
check-read-leak-down-how = Kurbelwelle gegen Drehen festgehalten, niemand an Riemen und Messern.

# en: 38759dac
check-read-valve-gap = Ventilspiel

# en: 988db05a
check-read-valve-gap-ask = Motor kalt, Kolben wie in der Betriebsanleitung. Ist das Ventilspiel, wie der Hersteller es will?

# en: c033fc93
check-see-display = Was die Anzeige sagt

# en: 472aa53e
check-see-display-ask = Schlüssel auf EIN, nicht START. Was zeigt die Anzeige? Schreiben Sie den Code, oder schicken Sie ein Foto der ganzen Armaturen.

# en: ec154e59
check-see-display-how = Ein Code hat zwei Zahlen, SPN (worum es geht) und FMI (auf welche Art). Beide aufschreiben, und jede Lampe, die anbleibt.

# en: 284c5e94
verdict-see-display-locked = Gesperrt: erst Schlüssel, PIN oder Fernsperre, dann ein Teil.

# en: 547282c9
verdict-see-display-fluid = Harnstoff-Sperre: erst die Flüssigkeit, ihre Heizung und ihre Codes.

# en: 4d4bb8ec
verdict-see-display-control = Sie wartet auf einen Hebel oder ein Pedal: richtig stellen, dann Schalter und Stecker dazu.

# en: 57974dd9
verdict-see-display-volts = SPN 168 mit FMI 4 oder ein Batteriezeichen: erst Batterie und Verbindungen; Unterspannung macht weitere Codes.

# en: 5a28621f
verdict-see-display-coded = SPN und FMI in der Liste des Herstellers nachlesen; FMI 3 Spannung zu hoch, 4 zu niedrig, 5 offen, 6 Schluss, 2 unregelmäßig.

# en: b004f263
verdict-see-display-dead = Armaturen ohne Strom: Batterie, Sicherung, Zündschloss, kleine Masse.

# en: c4b17b22
menu-see-display-as-always = Wie immer

# en: 5a2bc8b6
menu-see-display-dark = Dunkel oder leer

# en: b67410c7
menu-see-display-asks = Sie verlangt etwas

# en: 91ec9dae
menu-see-display-warns = Eine Warnung oder ein Code

# en: d0e85342
check-read-dash-volts = Spannung auf der Anzeige beim Starten

# en: 101ea68a
check-read-dash-volts-ask = Wie tief geht die Voltanzeige, während der Schlüssel auf START steht?

# en: 24f25d53
check-read-dash-volts-how = Vom Sitz aus, Leerlauf, Handbremse angezogen, Zapfwelle aus. Höchstens fünf Sekunden.

# en: d1c60216
verdict-read-dash-volts-strong = Die Armaturen behalten unter Last ihre Spannung.

# en: ab707165
verdict-read-dash-volts-look = Schwache oder kalte Batterie, Verbindungen, oder der Motor dreht sehr schwer.

# en: aace8942
verdict-read-dash-volts-weak = Spannung bricht bei START zusammen: Batterie, Klemmen oder Masse.

# en: 02eac9d6
verdict-read-dash-volts-no-current = Es fließt kaum Strom: Der Startstromkreis ist weiter hinten offen.

# en: 4e442692
check-fuel-flow = Kraftstoff bis zum Motor

# en: 9911ab7f
check-fuel-flow-ask = In ein Glas: Läuft an der letzten Verbindung vor Vergaser oder Einspritzpumpe der Kraftstoff frei?

# en: d5315b79
check-fuel-flow-how = Nicht bei Common-Rail-Motoren, dort stehen die Leitungen unter Hochdruck; da den Raildruck ablesen.

# en: ecedb823
check-follow-flow = Kraftstoff Stück für Stück

# en: d8121a9a
check-follow-flow-ask = Vom Tank an, eine Verbindung nach der anderen. Wo hört der Kraftstoff auf?

# en: 0ae1d286
check-follow-flow-how = Tankauslauf und Sieb, dann hinter dem Filter, dann hinter der Pumpe bei drehendem Motor oder laufender Pumpe.

# en: 83d51f4d
check-drain-bowl = Schwimmerkammer abgelassen

# en: 6e000e25
check-drain-bowl-ask = Schraube der Schwimmerkammer auf, Glas darunter. Kommt sauberes Benzin, Wasser oder Dreck, oder kaum etwas?

# en: 37261e98
check-drain-bowl-how = Viel und sauber heißt: Zulauf und Schwimmer sind gut, die Düsen kommen als Nächstes.

# en: 80a469cf
check-try-primed = Ein paar Tropfen Benzin in die Ansaugung

# en: 9adf05e3
check-try-primed-ask = Ein halber Teelöffel frisches Benzin in die Ansaugung, Filter wieder drauf, Kanister weg. Zündet er kurz?

# en: 64c89ed6
check-try-primed-how = Nur Benzin, nie ein Spray. Zündet er darauf und stirbt ab, kommt kein Kraftstoff an; zündet er nicht: Funke, Zündzeitpunkt oder Kompression.

# en: 71939925
check-ask-fuel-given = Was zuletzt getankt wurde

# en: 8b217e55
check-ask-fuel-given-ask = Aus welchem Kanister oder welcher Zapfsäule wurde zuletzt getankt? Kann Diesel, Benzin, Wasser oder Harnstofflösung in den falschen Tank gekommen sein?

# en: f70d2153
check-ask-fuel-given-how = Wenn etwas anderes hineingekommen sein kann, den Schlüssel nicht drehen, auch nicht auf EIN.

# en: fcb80b29
check-smell-sample = Probe gegen den richtigen Kraftstoff

# en: cd426c49
check-smell-sample-ask = Ein paar Tropfen aus Tank und Filter auf eine Pappe neben den richtigen Kraftstoff. Gleicher Geruch, gleiche Farbe, trocknet es gleich?

# en: 63f4c716
check-smell-sample-how = Benzin trocknet sofort, Diesel lässt einen fettigen Fleck, Harnstofflösung lässt weiße Kristalle. Schlüssel bleibt aus, bis es sicher ist.

# en: 61cc1533
check-ask-fuel-grade = Sorte des Diesels

# en: c81a4227
check-ask-fuel-grade-ask = Wann und wo wurde der Diesel gekauft? Ist es Winterdiesel?

# en: 60584416
verdict-ask-fuel-grade-fits-frost = Winterdiesel geht bis -15 oder -20 Grad durch den Filter; darunter flockt auch er aus.

# en: 7cb14af3
verdict-ask-fuel-grade-waxes = Sommerdiesel geht ab +5 bis -10 Grad nicht mehr durch den Filter: bei diesem Frost an Paraffin denken.

# en: 804771fd
check-look-at-bowl = Schauglas unter dem Filter

# en: e51ab4e2
check-look-at-bowl-ask = Sehen Sie das Schauglas unter dem Kraftstofffilter von außen an. Sauber, unten Wasser oder Dreck, trüb, oder Eis?

# en: 69615572
check-look-at-bowl-how = Nichts öffnen. Wasser steht unter dem Kraftstoff wie eine zweite Schicht.

# en: 2323fa4e
check-look-at-fuel = Kraftstoff im klaren Glas

# en: 058b5e9a
check-look-at-fuel-ask = Eine Probe aus Schauglas, Filter oder Ablass in ein klares Glas. Ist Wasser, Dreck, Paraffin oder Eis drin?

# en: 0e6ea062
check-look-at-fuel-how = Eine Minute stehen lassen, gegen das Licht halten. Bei Frost auch am Tankauslauf nachsehen.

# en: 1244224b
check-ask-fuel-level = In den Tank sehen

# en: ab512f54
check-ask-fuel-level-ask = Sehen Sie in den Tank. Wie viel ist drin?

# en: afef1de8
check-ask-fuel-level-how = Motor kalt, nicht rauchen, keine Flamme. Sagen Sie es, wenn Sie nur vermuten; sagen Sie auch, welchen Deckel Sie aufgemacht haben.

# en: d6c30beb
verdict-ask-fuel-level-dip-it = Nicht nachgesehen heißt nicht bekannt: Anzeige und Gedächtnis stimmen oft nicht.

# en: e8785403
verdict-ask-fuel-level-dry = Erst den richtigen Kraftstoff nachfüllen; ein leergefahrener Diesel muss dann entlüftet werden.

# en: b8d7d458
check-ask-fuel-age = Alter des Kraftstoffs

# en: 3b3af718
check-ask-fuel-age-ask = Wie alt ist der Kraftstoff im Tank?

# en: 139c9f8d
verdict-ask-fuel-age-petrol-good = Gut zum Starten.

# en: 6c5caa18
verdict-ask-fuel-age-petrol-doubtful = Benzin hält drei bis sechs Monate, mit Alkohol darin weniger.

# en: 7df2ae38
verdict-ask-fuel-age-petrol-stale = Zu alt für Benzin: frischer Kraftstoff, bevor ein Teil kommt. Beim Diesel nach Wasser und Schlamm sehen.

# en: 8b21b06c
check-look-under-machine = Tropfen unter der Maschine

# en: 10825d23
check-look-under-machine-ask = Sehen Sie von der Seite unter den Tank und an den Schläuchen entlang. Ist etwas nass, tropft es, oder ist ein Fleck da?

# en: 1af09221
check-look-under-machine-how = Nur ansehen. Wenn Sie Kraftstoff riechen oder sehen: keine Flamme, kein Schlüssel, zurücktreten und uns sagen.

# en: 38cbdcaf
check-smell-fuel = Geruch und Farbe des Benzins

# en: fdbdf1d1
check-smell-fuel-ask = Tankdeckel ab: Riecht das Benzin frisch, oder sauer wie Lack? Wie sieht es aus?

# en: aaab140c
check-smell-fuel-how = Motor kalt, im Freien, nicht rauchen. Von oberhalb des Deckels ist nah genug.

# en: e4e7ca49
check-ask-flooding = Anzeichen, dass er abgesoffen ist

# en: 7bacd79a
check-ask-flooding-ask = Riecht es am Auspuff stark nach Benzin, oder tropft Benzin aus der Luftansaugung?

# en: fac175fa
check-hear-pump = Elektrische Kraftstoffpumpe

# en: d3d68a14
check-hear-pump-ask = Drehen Sie den Schlüssel auf EIN, nicht START. Hören Sie die Kraftstoffpumpe ein paar Sekunden ticken oder summen?

# en: ac743a12
check-ask-last-use = Zuletzt gelaufen

# en: 534be5f0
check-ask-last-use-ask = Wann lief sie zuletzt?

# en: f73ae242
check-ask-how-stopped = Wie sie ausging

# en: 4e475b67
check-ask-how-stopped-ask = Wie ging sie aus, als sie zuletzt lief?

# en: 4ff1618c
check-ask-recent-event = Was vorher war

# en: e7faf7c3
check-ask-recent-event-ask = War kurz vorher etwas davon?

# en: 9a85d873
check-ask-recent-event-how = Nennen Sie alles, was passt, auch wenn es nichts damit zu tun zu haben scheint.

# en: d355d4fd
check-ask-recent-work = Letzte Arbeiten

# en: c047fae6
check-ask-recent-work-ask = Wurde in letzter Zeit etwas daran repariert oder geändert? Was wurde dabei gelöst?

# en: a0bba638
check-ask-weather = Wetter

# en: 0399149f
check-ask-weather-ask = Wie kalt ist es, wo die Maschine steht? Heute früh Frost?

# en: e2e66608
check-ask-battery-age = Alter der Batterie

# en: fd0dfe4d
check-ask-battery-age-ask = Wie alt ist die Batterie ungefähr?

# en: d5988918
check-ask-goes-flat = Ob die Batterie leer wird

# en: 4b258b0a
check-ask-goes-flat-ask = Ist die Batterie in letzter Zeit von selbst leer geworden?

# en: b52425e5
check-crack-injector-line = Einspritzleitung gelöst

# en: 403e8ea2
check-crack-injector-line-ask = Überwurfmutter an einer Düse eine halbe Umdrehung auf, Lappen darüber, durchdrehen. Spritzt Diesel, tröpfelt er, oder kommt nichts?

# en: d39be9fe
check-crack-injector-line-how = Nur bei mechanischer Pumpe, nach ihrem Handbuch, Hände und Gesicht weg. Nie bei einem Common-Rail-Motor.

# en: 07a2c969
verdict-crack-injector-line-pump-delivers = Pumpe und Zulauf sind gut: Düsen, Vorglühen, Kompression und Steuerzeiten kommen als Nächstes.

# en: 528ebb2e
verdict-crack-injector-line-pump-does-not = Erst Abstellung und Luft, dann der Zulauf, zuletzt die Pumpe.

# en: 6c62ae7f
check-watch-return = Klarer Schlauch im Rücklauf

# en: 3dfd09eb
check-watch-return-ask = Klarer Schlauch im Kraftstoffrücklauf, Motor unter Last. Kommen Blasen, unter mehr Last mehr?

# en: 01685320
check-test-injectors = Düsen am Prüfgerät

# en: 1b1dd043
check-test-injectors-ask = Düsen am Handprüfgerät. Öffnungsdruck und Strahl nach Herstellerangabe?

# en: 60b76e0d
check-read-crank-signal = Motordrehzahl beim Durchdrehen

# en: d299edc2
check-read-crank-signal-ask = Diagnosegerät dran. Zeigt es beim Durchdrehen eine gleichmäßige Motordrehzahl?

# en: 143700e6
check-read-rail-pressure = Kraftstoffdruck beim Durchdrehen

# en: ef5301a0
check-read-rail-pressure-ask = Diagnosegerät dran. Baut sich der Kraftstoffdruck beim Durchdrehen bis zur Herstellerangabe auf?

# en: ec8ab1a8
check-read-rail-pressure-how = Nur ablesen. Auf der Hochdruckseite wird nichts geöffnet.

# en: b4731098
check-test-under-load = Belastungsprüfung der Batterie

# en: 07e6be5d
check-test-under-load-ask = Halber Kälteprüfstrom, 15 Sekunden lang. Hält die geladene Batterie die Grenze?

# en: 27510742
check-test-under-load-how = Nur, wenn zu 75 Prozent oder mehr geladen. Grenze bei 12 V nach Batterietemperatur: 9,6 V ab 20 Grad, 9,4 bei 10, 9,1 bei -1, 8,9 bei -7, 8,7 bei -12, 8,5 bei -18. Bei 6 oder 24 V die Hälfte oder das Doppelte.

# en: f8516927
verdict-test-under-load-sound = Die Batterie taugt. Nach Verbindungen, Anlasser, Laden oder Ruhestrom sehen.

# en: e6f418dd
verdict-test-under-load-worn = War sie voll geladen und in Ruhe, ist sie verbraucht: erneuern. Wenn nicht, laden und noch einmal prüfen.

# en: 1e95c452
check-read-load-volts = Spannung am Ende der Belastungsprüfung

# en: 1b206684
check-read-load-volts-ask = Wie viel Volt an den Polen nach 15 Sekunden mit halbem Kälteprüfstrom?

# en: a212d36f
check-read-load-volts-how = Nur, wenn zu 75 Prozent oder mehr geladen. Bei 6 oder 24 V die Hälfte oder das Doppelte.

# en: 7b4accc3
verdict-read-load-volts-fit = Besteht bei jeder Temperatur.

# en: 29f34338
verdict-read-load-volts-judge = Nach der Batterietemperatur beurteilen: mindestens 9,6 V ab 20 Grad, 9,4 bei 10, 9,1 bei -1, 8,9 bei -7, 8,7 bei -12, 8,5 bei -18. Bei 6 oder 24 V die Hälfte oder das Doppelte.

# en: c21af971
verdict-read-load-volts-worn = Zu niedrig bei jedem Wetter: verbraucht, wenn sie geladen war; sonst laden und noch einmal prüfen.

# en: 03f2af77
check-ask-work-since = Der Schaden und die letzte Arbeit

# en: 5c69024a
check-ask-work-since-ask = Kam der Schaden gleich, nachdem jemand daran gearbeitet hat, oder war er vorher schon da?

# en: 8115407f
check-ask-work-since-how = Auch Arbeit aus anderem Grund zählt: Riemen, Sitz, Waschen, Batterie. Was wurde dabei abgezogen oder abgebaut?

# en: dac9312f
check-see-smoke = Rauch beim Durchdrehen

# en: 09ce4368
check-see-smoke-ask = Kommt beim Drehen Rauch aus dem Auspuff, und welche Farbe hat er?

# en: 7e167433
verdict-see-smoke-unburnt-diesel = Beim Diesel ist weißer Rauch unverbrannter Kraftstoff: Er bekommt Diesel, ist aber zu kalt oder hat zu wenig Kompression.

# en: 6e334080
verdict-see-smoke-no-fuel = Ein Diesel, der ganz ohne Rauch dreht, bekommt keinen Kraftstoff.

# en: 0343eaca
verdict-see-smoke-too-rich = Zu wenig Luft für den Kraftstoff: Filter, Choke, Auspuff.

# en: 6da0cd13
verdict-see-smoke-oil = Er verbrennt Öl: Ringe, Ventilführungen, zu viel Öl, oder er lag auf der Seite.

# en: 9362a079
check-hear-bangs = Knallen

# en: b833d135
check-hear-bangs-ask = Hat es beim Starten aus Auspuff oder Ansaugung geknallt oder Flammen gespuckt?

# en: c8fd0562
check-ask-came-on = Wie es kam

# en: 2cf0f43b
check-ask-came-on-ask = Kam das von einem Mal aufs andere, oder sprang sie über Wochen immer schlechter an?

# en: 0dac84f3
check-ask-choke = Was der Choke ändert

# en: c610dabe
check-ask-choke-ask = Was hat der Choke geändert, mit ihm und ohne ihn?

# en: 19e0ac2f
check-see-exhaust-puffs = Luft aus dem Auspuff

# en: d8a5099d
check-see-exhaust-puffs-ask = Haben Sie es beim Drehen aus dem Auspuffrohr puffen hören, oder kam kaum etwas heraus?

# en: 67233777
check-hear-start = Was der Schlüssel bewirkt

# en: 6b1a1000
check-hear-start-ask = Was genau passiert, wenn Sie den Schlüssel auf START drehen?

# en: 03c1084d
check-hear-start-how = Sagen Sie nur, was Sie beim letzten Mal gesehen und gehört haben; nicht noch einmal probieren.

# en: 594595f8
verdict-hear-start-no-engine-turn = Der Motor dreht nicht: Batterie, Verbindungen, Startstromkreis oder Anlasser.

# en: a1195f68
verdict-hear-start-slow-turn = Der Motor dreht schlecht: zu wenig Strom, oder er geht zu schwer.

# en: 91009652
verdict-hear-start-no-fire = Der Startstromkreis geht: nach Kraftstoff, Funke, Vorglühen und Luft sehen.

# en: 0482db12
verdict-hear-start-urgent = Der Anlasser hört nicht auf: sofort den Strom wegnehmen.

# en: 46f07eb9
menu-hear-start-does-not-turn = Der Motor dreht nicht

# en: 0be75f28
menu-hear-start-turns-badly = Er dreht schlecht

# en: 6474c6df
menu-hear-start-turns-well = Er dreht gut

# en: 2ed665c4
menu-hear-start-will-not-stop = Der Anlasser hört nicht auf

# en: 51a35204
check-try-start = Ein Versuch mit dem Schlüssel

# en: 3aac183f
check-try-start-ask = Bitte starten Sie noch einmal vom Sitz aus, höchstens fünf Sekunden. Was passiert?

# en: d4b76c07
check-try-start-how = Leerlauf, Handbremse angezogen, Zapfwelle aus, niemand in der Nähe. Schlüssel nach fünf Sekunden loslassen.

# en: 0a8bba1a
check-engine-goes-round = Ob der Motor dreht

# en: 67490a9c
check-engine-goes-round-ask = Dreht sich der Motor selbst (Riemen, Lüfter oder Riemenscheibe), während der Schlüssel auf START steht?

# en: 4f612b0a
check-engine-goes-round-how = Denken Sie daran, was Lüfter oder Riemen machten. Ein surrender Anlasser allein ist noch nicht der Motor.

# en: 2e9644c4
check-hear-click = Am Anlasser horchen

# en: a0b70712
check-hear-click-ask = Drehen Sie den Schlüssel einmal auf START. Was hört man vom Anlasser?

# en: 518911d6
check-hear-click-how = Vom Sitz aus, Leerlauf, Handbremse angezogen, Zapfwelle aus. Ein Zweiter kann aus zwei Schritten Abstand horchen.

# en: 0982fe21
check-how-regular = Wann es vorkommt

# en: 734e48fc
check-how-regular-ask = Ist das jedes Mal so, oder nur manchmal?

# en: b5fefa23
menu-how-regular-always = Jedes Mal

# en: 9b82e3be
menu-how-regular-now-and-then = Mal ja, mal nein, ohne Regel

# en: f6496e18
menu-how-regular-weather-or-heat = Nur heiß, kalt oder nass

# en: 0ba2da31
menu-how-regular-standing = Nur nach langem Stehen

# en: 582e0fb5
check-see-lights = Licht bei Zündung EIN

# en: 578522fa
check-see-lights-ask = Schlüssel auf EIN, nicht START. Wie hell sind die Lampen oder die Armaturen?

# en: ba5abbb1
check-see-lights-how = Schalten Sie die Scheinwerfer ein, wenn es welche gibt, und vergleichen Sie mit sonst.

# en: 42d9c3f7
check-see-lights-at-start = Licht beim Starten

# en: 58d6c081
check-see-lights-at-start-ask = Licht an, dann Schlüssel auf START. Was macht das Licht?

# en: 8cad20c0
check-see-lights-at-start-how = Vom Sitz aus, Leerlauf, Handbremse angezogen, Zapfwelle aus. Drei Sekunden reichen.

# en: f6067fcc
check-where-are-you = Wo der Kunde ist

# en: e9099402
check-where-are-you-ask = Stehen Sie jetzt neben der Maschine?

# en: c8dc71b8
check-told-jump = Ob Starthilfe versucht wurde

# en: d919f4d4
check-told-jump-ask = Wurde Starthilfe versucht, und was kam dabei heraus?

# en: 81b0a0de
check-read-neutral-switch = Hinter dem Leerlaufschalter

# en: ddf72f23
check-read-neutral-switch-ask = Wie viel Volt am Kabel, das aus dem Leerlaufschalter kommt, Schlüssel auf START?

# en: e882d4b1
check-read-neutral-switch-how = Mit dem Kabel vergleichen, das hineingeht. Der Hebel oder das Pedal steht wie zum Starten.

# en: 0bde5432
check-read-pto-switch = Hinter dem Zapfwellenschalter

# en: b4580428
check-read-pto-switch-ask = Wie viel Volt am Kabel, das aus dem Zapfwellenschalter kommt, Schlüssel auf START?

# en: e882d4b1
check-read-pto-switch-how = Mit dem Kabel vergleichen, das hineingeht. Der Hebel oder das Pedal steht wie zum Starten.

# en: 455b8506
check-read-seat-switch = Hinter dem Sitzschalter

# en: 0644ae48
check-read-seat-switch-ask = Wie viel Volt am Kabel, das aus dem Sitzschalter kommt, Schlüssel auf START?

# en: e882d4b1
check-read-seat-switch-how = Mit dem Kabel vergleichen, das hineingeht. Der Hebel oder das Pedal steht wie zum Starten.

# en: 96011a63
check-read-clutch-switch = Hinter dem Kupplungsschalter

# en: 5836f6dc
check-read-clutch-switch-ask = Wie viel Volt am Kabel, das aus dem Kupplungsschalter kommt, Schlüssel auf START?

# en: e882d4b1
check-read-clutch-switch-how = Mit dem Kabel vergleichen, das hineingeht. Der Hebel oder das Pedal steht wie zum Starten.

# en: ad993756
check-read-brake-switch = Hinter dem Bremsschalter

# en: 69b1927d
check-read-brake-switch-ask = Wie viel Volt am Kabel, das aus dem Bremsschalter kommt, Schlüssel auf START?

# en: e882d4b1
check-read-brake-switch-how = Mit dem Kabel vergleichen, das hineingeht. Der Hebel oder das Pedal steht wie zum Starten.

# en: 9c0cb8f5
check-read-stud = Batteriebolzen des Magnetschalters

# en: c0e4ff5e
check-read-stud-ask = Wie viel Volt am Batteriebolzen des Magnetschalters, Schlüssel auf START?

# en: eda439ab
check-read-stud-how = Schwarz an den Minuspol der Batterie, Rot an den Bolzen, nicht an die Mutter des Kabels.

# en: 67a80bbc
verdict-read-stud-sound = Die Plusseite ist bis zum Bolzen gut.

# en: b1324ffb
verdict-read-stud-sag = Mit dem Batteriepol vergleichen: mehr als 0,4 V Unterschied gehen in Klemme oder Kabel verloren; sonst sackt die Batterie ab.

# en: 251d0dad
verdict-read-stud-lossy = Batterie zusammengebrochen, oder Klemme oder Pluskabel schlecht: mit dem Batteriepol vergleichen.

# en: a0aa5415
verdict-read-stud-open = Keine Spannung: Plusklemme, Kabel, Trennschalter oder Batterie unterbrochen.

# en: c86634de
check-read-trigger = Volt am kleinen Anschluss des Magnetschalters

# en: d531649a
check-read-trigger-ask = Wie viel Volt am kleinen Anschluss des Magnetschalters, Schlüssel auf START?

# en: 6520c1e8
check-read-trigger-how = Schwarz an den Minuspol der Batterie. Beim Durchdrehen ist im Steuerstromkreis bis etwa 1 V weniger als am Pol üblich.

# en: a106e1ce
verdict-read-trigger-command-arrives = Der Startbefehl kommt an: Der Fehler sitzt im Magnetschalter, im Anlasser oder in seiner Versorgung.

# en: 092291c8
verdict-read-trigger-command-weak = Widerstand in Zündschloss, Sicherheitsschaltern, Steckern oder Sicherungshalter; der Spannung rückwärts nachgehen.

# en: 86813253
verdict-read-trigger-command-missing = Kein Startbefehl: rückwärts durch Relais, Sicherheitsschalter und Zündschloss suchen.

# en: 21f4e311
check-read-starter = Volt am Anschluss des Anlassers selbst

# en: f0e64df5
check-read-starter-ask = Wie viel Volt am Anschluss des Anlassers, Schlüssel auf START?

# en: ea579a8d
verdict-read-starter-motor-guilty = Der Anlasser bekommt seine Spannung und dreht nicht: Kohlen, Wicklung oder fester Motor.

# en: d4dc1ef7
verdict-read-starter-sag = Hohe Last oder schwache Batterie: Strom und Batteriepol messen.

# en: c3973717
verdict-read-starter-lossy = In den Kontakten des Magnetschalters oder im Kabel verloren, oder die Batterie ist zusammengebrochen: mit dem Bolzen vergleichen.

# en: 90c910a5
verdict-read-starter-open = Der Magnetschalter gibt nichts weiter: kein Befehl, Spule oder Kontakte.

# en: fca72636
check-read-ground-drop = Masseseite beim Durchdrehen

# en: b217e112
check-read-ground-drop-ask = Wie viel Volt vom blanken Motorblock zum Minuspol der Batterie, Schlüssel auf START?

# en: 2042af83
verdict-read-ground-drop-sound = Masseseite gut.

# en: 2ff67618
verdict-read-ground-drop-between = Hier sind die Quellen uneins. Masseband und Klemme einzeln messen.

# en: 94e2ab58
verdict-read-ground-drop-faulty = Masseseite schlecht: Masseband, sein anderes Ende oder die Minusklemme.

# en: 0d112da1
check-read-minus-clamp = Minusklemme beim Durchdrehen

# en: 2d976c10
check-read-minus-clamp-ask = Wie viel Volt vom Minuspol zu seiner eigenen Klemme, Schlüssel auf START?

# en: f7744faa
verdict-read-minus-clamp-sound = Verbindung gut.

# en: 8640f790
verdict-read-minus-clamp-between = Hier sind die Quellen uneins: säubern und festziehen, dann noch einmal messen.

# en: badbe6f0
verdict-read-minus-clamp-faulty = Diese Verbindung ist schlecht: Pol und Klemme blank machen.

# en: ef398664
check-read-plus-clamp = Plusklemme beim Durchdrehen

# en: 5449f0e6
check-read-plus-clamp-ask = Wie viel Volt vom Pluspol zu seiner eigenen Klemme, Schlüssel auf START?

# en: f7744faa
verdict-read-plus-clamp-sound = Verbindung gut.

# en: 8640f790
verdict-read-plus-clamp-between = Hier sind die Quellen uneins: säubern und festziehen, dann noch einmal messen.

# en: badbe6f0
verdict-read-plus-clamp-faulty = Diese Verbindung ist schlecht: Pol und Klemme blank machen.

# en: 4d86fb17
check-read-amps = Strom des Anlassers

# en: 5dd76280
check-read-amps-ask = Wie viel Ampere fließen zum Anlasser, Schlüssel auf START?

# en: 57d85ca5
verdict-read-amps-open = Kein Strom: Stromkreis offen, Kontakte oder Kohlen.

# en: 9a8ec921
verdict-read-amps-low-slow = Wenig Strom und langsam: Widerstand im Stromkreis. Wenig und schnell: Das Ritzel greift nicht.

# en: 381b17e4
verdict-read-amps-normal-slow = Üblicher Strom: Dreht er langsam, nach Batteriespannung und kaltem Öl sehen.

# en: d967283b
verdict-read-amps-high-slow = Viel Strom und langsam: Motor geht schwer, Anlasser reibt oder hat Schluss. Nach der Motorgröße beurteilen.

# en: 33c3b801
check-read-rest-volts = Batterie in Ruhe

# en: e5fb3f77
check-read-rest-volts-ask = Was zeigt ein Messgerät an den beiden Batteriepolen, alles aus?

# en: f7feabf9
check-read-rest-volts-how = Messgerät auf 20 V Gleichspannung, Rot an Plus, Schwarz an Minus, auf den Bleipolen selbst. In der letzten halben Stunde kein Ladegerät, kein Start.

# en: e7c0aa84
verdict-read-rest-volts-fit = Voll genug zum Prüfen unter Last. Spannung in Ruhe beweist keine gute Batterie.

# en: 1f41eded
verdict-read-rest-volts-charge-first = Erst laden; eine Prüfung jetzt zeigt nur grobe Fehler.

# en: ef2eb5f4
verdict-read-rest-volts-charge-judge-after = Vor allem anderen laden, danach beurteilen. Fehlen nach voller Ladung zwei Volt, ist eine Zelle hin.

# en: 71d77bf0
verdict-read-rest-volts-wait = Noch nicht zur Ruhe gekommen, oder ein Ladegerät hängt dran. Später noch einmal messen.

# en: 9aa1def8
check-read-battery-start = Batterie beim Durchdrehen

# en: d3fb08ea
check-read-battery-start-ask = Wie viel Volt an den Batteriepolen, Schlüssel auf START gehalten?

# en: 9aa63e62
check-read-battery-start-how = An den Polen, nicht an den Klemmen. Fünf Sekunden.

# en: 160035f5
verdict-read-battery-start-strong = Die Batterie hält unter Last.

# en: 9de4cb0c
verdict-read-battery-start-look = Schwache oder kalte Batterie, oder er geht zu schwer; die Quellen sind uneins. Mit dem Strom des Anlassers vergleichen.

# en: 8126b49d
verdict-read-battery-start-weak = Die Batterie bricht ein, oder der Anlasser ist blockiert.

# en: 0605c54e
verdict-read-battery-start-no-current = Es fließt kaum Strom: Der Stromkreis ist weiter hinten offen.

# en: 644bad52
check-read-cells = Säuredichte der Zellen

# en: 88c131ce
check-read-cells-ask = Unterschied der Säuredichte zwischen höchster und niedrigster Zelle?

# en: e6bced7b
check-read-cells-how = Erst auf 27 Grad umrechnen, 0,004 je 5,5 Grad. Voll laden und noch einmal messen, bevor Sie sie verwerfen.

# en: 8ec0f9bf
verdict-read-cells-alike = Zellen gleich. Alle niedrig: laden.

# en: 74060625
verdict-read-cells-suspect = Zelle verdächtig: voll laden und noch einmal messen; bleibt der Unterschied, ist die Batterie schlecht. Stand zu niedrig: nur destilliertes Wasser, keine Säure, und vor der nächsten Prüfung nachladen.

## Handgriffe

# en: ef17ea0c
act-charge-battery = Batterie laden

# en: b0ada4dc
act-charge-battery-ask = Bitte laden Sie die Batterie im Freien mehrere Stunden, dann starten Sie vom Sitz aus. Was passiert jetzt?

# en: 0ffa8150
act-charge-battery-how = Beim An- und Abklemmen Ladegerät aus; Plus an Plus, Minus an Minus. Nur eine heile Batterie, die nicht gefroren ist.

# en: 9adfd35f
act-cold-start = Kaltstart nach Anleitung

# en: 4e4fdfb1
act-cold-start-ask = Choke ganz rein, Gas auf Starten, dann zehn Sekunden starten oder fünfmal ziehen; Choke weg, sobald er zündet. Was passiert?

# en: 8cf0477d
act-cold-start-how = Nur bei kaltem Motor und wenn es nicht nach Benzin riecht.

# en: dd38f96f
act-clean-and-tighten-clamps = Klemmen säubern und festziehen

# en: 92be8309
act-clean-and-tighten-clamps-ask = Schlüssel abziehen, Masseklemme zuerst ab, beide Pole und Klemmen blank machen, fest aufsetzen, Masse zuletzt. Dann vom Sitz aus starten. Was passiert?

# en: 3f094696
act-clean-and-tighten-clamps-how = Schutzbrille auf. Nur mit dem passenden Schlüssel, und ohne beide Pole zugleich zu berühren.

# en: 1ce9979c
act-work-primer = Handpumpe drücken

# en: fe839e8f
act-work-primer-ask = Drücken Sie die Handpumpe, bis sie fest wird, höchstens vierzigmal. Dann vom Sitz aus starten. Was passiert?

# en: 60143e18
act-work-primer-how = Tank voll genug, nichts öffnen. Läuft sie nur, solange Sie pumpen, dann sagen Sie es.

# en: a8aa91fd
act-wait-key-out = Eine Minute ohne Schlüssel, dann anderer Schlüssel oder PIN

# en: f7351b5d
act-wait-key-out-ask = Ziehen Sie den Schlüssel eine Minute ab, dann probieren Sie es mit dem anderen Schlüssel, oder geben Sie die PIN noch einmal ein. Was passiert?

# en: b2a771fc
act-wait-key-out-how = Kein anderer Schlüssel, Telefon oder Anhänger nahe am Schloss.

# en: f947913a
act-clutch-down-start = Starten mit getretener Kupplung

# en: 85422edf
act-clutch-down-start-ask = Kupplung ganz durchgetreten oder Antrieb ausgeschaltet, wie die Betriebsanleitung sagt, Hebel in der Mitte, dann vom Sitz aus starten. Was passiert?

# en: b42ef63b
act-wait-flooded = Warten, bis er nicht mehr abgesoffen ist

# en: f17077d9
act-wait-flooded-ask = Choke weg, Gas ganz auf, 20 Minuten warten, dann zehn Sekunden starten oder fünfmal ziehen. Was passiert?

# en: b0013aa7
act-wait-flooded-how = Schlüssel loslassen, sobald er zündet. Aufhören, wenn irgendwo Benzin tropft.

# en: c33bafee
act-add-fuel = Frischen Kraftstoff nachfüllen

# en: 48bf5d01
act-add-fuel-ask = Wenn der Tank nicht voll ist: Füllen Sie fünf Liter vom richtigen Kraftstoff nach, warten Sie zwei Minuten, dann versuchen Sie zu starten. Was passiert?

# en: d0faf0d0
act-add-fuel-how = Motor kalt, im Freien, keine Flamme. Erst auf den Deckel sehen: Benzin oder Diesel. Ein leergefahrener Diesel muss von einem Monteur entlüftet werden.

# en: 71cbf695
act-open-tap = Kraftstoffhahn auf, Tankdeckel gelöst

# en: 9e20672a
act-open-tap-ask = Drehen Sie den Kraftstoffhahn ganz auf, lösen Sie den Tankdeckel, warten Sie zwei Minuten, und versuchen Sie zu starten. Was passiert?

# en: 64a36363
act-open-tap-how = Motor kalt, keine Flamme. Läuft sie an und geht nach Minuten nur bei festem Deckel aus, dann sagen Sie es.

# en: 5fe9741a
act-renew-fuse = Sicherung gesäubert oder gewechselt

# en: d720512a
act-renew-fuse-ask = Schlüssel abziehen. Sicherung zweimal heraus und hinein, oder eine mit derselben Zahl einsetzen. Dann vom Sitz aus starten. Was passiert?

# en: 49455ecc
act-renew-fuse-how = Nie eine größere. Fliegt sie wieder, aufhören.

# en: daed8fb0
act-clear-mud = Dreck und Gras weggeräumt

# en: a670c84a
act-clear-mud-ask = Schlüssel abziehen. Dreck und Gras von Pedalen, Hebeln, ihren Stangen und unter dem Sitz abkratzen, alles einmal bewegen, dann vom Sitz aus starten. Was passiert?

# en: 25afbcf6
act-clear-mud-how = Kein Wasserstrahl auf Stecker und Schalter. Hände weg von den Messern.

# en: 3eb083b9
act-let-cool = Motor abkühlen lassen

# en: 5fca7f21
act-let-cool-ask = Lassen Sie sie ausgeschaltet 40 Minuten mit offener Haube stehen, dann versuchen Sie zu starten. Was passiert?

# en: 4c2713e5
act-let-cool-how = Solange er heiß ist, nichts öffnen, auch den Kühler nicht.

# en: 733ee3ec
act-preheat-twice = Zweimal vorglühen

# en: bdd53d1b
act-preheat-twice-ask = Vorglühen, bis die Lampe ausgeht, fünf Sekunden warten, noch einmal vorglühen, dann vom Sitz aus starten. Was passiert?

# en: 224b1961
act-preheat-twice-how = Zusammen höchstens eine halbe Minute glühen, und keinerlei Spray.

# en: ea62894c
act-top-up-oil = Öl nachgefüllt

# en: d5a9ae59
act-top-up-oil-ask = Motor gerade, kalt und aus. Füllen Sie das Öl aus der Betriebsanleitung bis zur oberen Marke nach, dann noch einmal starten. Was passiert?

# en: 89684829
act-top-up-oil-how = Nicht über die Marke. Fehlt viel, nachsehen, wo es geblieben ist.

# en: abe96af9
act-reset-tilt = Gerade stellen, Schlüssel eine Minute aus, dann ein

# en: 6beaccc9
act-reset-tilt-ask = Maschine aufrecht und gerade, niemand verletzt, kein Kraftstoff ausgelaufen. Schlüssel eine Minute aus, dann vom Sitz aus starten. Was passiert?

# en: aaf2c6de
act-move-controls = Jeden Hebel bewegen und zurückstellen

# en: d1065ed4
act-move-controls-ask = Bitte bewegen Sie jeden Hebel, jedes Pedal und jeden Schalter einmal und stellen Sie alles zurück, dann versuchen Sie zu starten. Was passiert jetzt?

# en: cdba9c4c
act-move-controls-how = Was sie hat, einmal hin und zurück: Hebel für Messer oder Zapfwelle, Ganghebel, Pedale ganz durch, Sitz, Sicherheitsbügel, Kraftstoffhahn, Abstellzug, Motorschalter, Trennschalter, Not-Aus.

# en: 709e1a8e
act-jump-start = Starthilfe

# en: d538d890
act-jump-start-ask = Geben Sie Starthilfe von einer guten 12-Volt-Batterie, wie beschrieben, und starten Sie vom Sitz aus. Was passiert?

# en: cecff457
act-jump-start-how = Gleiche Spannung, beide mit Minus an Masse, Batterie heil und nicht gefroren, Schutzbrille. Zuerst Plus an Plus; letzte Klemme an blankes Motormetall, weit weg von der Batterie. Fünf Minuten warten, dann vom Sitz aus starten.

## Abhilfen

# en: b74f9575
remedy-renew-air-filter = Ansaugung frei machen, Filter erneuern

# en: 749cf382
remedy-renew-air-filter-text = Bis zur Drosselklappe nach Nestern und Lappen sehen; Filter erneuern, einen Papierfilter nicht auswaschen.

# en: 83e9804d
remedy-clear-exhaust = Auspuff frei machen

# en: 98fd9767
remedy-clear-exhaust-text = Öffnung, Funkenfänger und Topf; ein loses Blech darin scheppert, wenn man dagegen klopft.

# en: 9ff35a45
remedy-charge-battery = Batterie laden

# en: 78983fbc
remedy-charge-battery-text = Voll laden, ruhen lassen, unter Last prüfen, und herausfinden, warum sie leer war (Ladespannung, Ruhestrom).

# en: 6d4ba55b
remedy-replace-battery = Neue Batterie einbauen

# en: 31e86894
remedy-replace-battery-text = Massekabel zuerst ab und zuletzt dran. Beide Klemmen säubern und fetten, dann die Ladespannung messen, damit die neue voll bleibt.

# en: 05cec718
remedy-clean-earth = Masseverbindungen säubern

# en: 0767c7f1
remedy-clean-earth-text = Beide Enden des Massekabels auf blankes Metall, auch zwischen Motor und Rahmen; nachweisen mit dem Spannungsabfall vom Block zum Minuspol beim Durchdrehen.

# en: aad898a7
remedy-replace-earth = Neues Masseband einbauen

# en: 06948a18
remedy-replace-earth-text = Neues Masseband mit mindestens dem alten Querschnitt, an beiden Enden auf blankes Metall.

# en: 722f72d1
remedy-replace-plus-cable = Pluskabel oder sein Ende erneuern

# en: 5dbb2cd4
remedy-replace-plus-cable-text = Kabelschuh oder ganzes Kabel erneuern; Querschnitt nach Länge und Strom; weg von scharfen Kanten und vom Auspuff.

# en: 434b5c8d
remedy-clear-short = Pluskabel vom Metall freilegen

# en: 4aefb65f
remedy-clear-short-text = Erst Batterie ab. Kabelschuh vom Gehäuse wegdrehen, verbrannte Isolierung erneuern, Kabel anschellen; die Ohm gegen Masse müssen offen sein, bevor das Pluskabel drankommt.

# en: 83db55db
remedy-clean-carburettor = Vergaser reinigen

# en: 65e51dff
remedy-clean-carburettor-text = Schwimmerkammer, Hauptdüse (oft in der Schraube der Kammer) und Kanäle frei; Schwimmer und Nadel leichtgängig. Bleiben Kanäle zu, erneuern.

# en: ce8427be
remedy-seal-intake = Ansaugung abdichten

# en: c768425f
remedy-seal-intake-text = Neue Dichtungen oder neuer Gummi, Flächen eben, Muttern gleichmäßig fest.

# en: 796b3878
remedy-mend-charging = Laden in Ordnung bringen

# en: 3c433605
remedy-mend-charging-text = Erst Riemen, Stecker und Sicherung, dann Lichtmaschine oder Spule und Regler, dann Batterie laden und die Ladespannung noch einmal messen.

# en: 087782c2
remedy-fit-belt = Riemen spannen oder erneuern

# en: b1cbd512
remedy-fit-belt-text = Nachsehen, warum er kaputtging (feste Riemenscheibe, Öl). Danach Batterie laden und Ladespannung messen.

# en: 256d8d04
remedy-set-choke = Choke und Gas richtig stellen

# en: 7840b42b
remedy-set-choke-text = Kalter Motor voller Choke, warmer keiner; Gas dorthin, wo die Betriebsanleitung es zum Starten will.

# en: b9b91d52
remedy-mend-choke = Chokezug gangbar machen oder erneuern

# en: 14dc4170
remedy-mend-choke-text = Klappe und Gestänge leichtgängig, Zug so geklemmt, dass die Klappe ganz zu und ganz auf geht.

# en: 750e0039
remedy-clean-clamps = Batterieklemmen säubern oder erneuern

# en: 955b5cc5
remedy-clean-clamps-text = Pole und Klemmen blank, fest und gefettet; nachweisen mit dem Spannungsabfall vom Pol zur Klemme beim Durchdrehen.

# en: 4bf31c7f
remedy-mend-valves = Ventil gangbar machen oder einschleifen, Spiel einstellen

# en: 82a54aee
remedy-mend-valves-text = Erst das Spiel, dann ob der Schaft geht; ein fester Schaft löst sich manchmal mit Kriechöl, ein verbranntes Ventil wird eingeschliffen oder erneuert.

# en: ca0d2751
remedy-renew-head-gasket = Zylinderkopfdichtung erneuern

# en: 2632d94c
remedy-renew-head-gasket-text = Kopf und Block plan, Schrauben in Reihenfolge und mit Drehmoment des Herstellers, Öl und Kühlwasser neu. Oft Werkstattarbeit.

# en: 5f8304e0
remedy-overhaul-engine = Ringe, Kolben, Zylinder

# en: 1cd8d686
remedy-overhaul-engine-text = Werkstattarbeit. Gegen einen anderen Motor abwägen.

# en: 4866bf35
remedy-set-timing = Steuerzeiten neu einstellen

# en: 7ab1c46c
remedy-set-timing-text = Marken nach Handbuch übereinander, Antrieb auf fehlende Zähne oder abgescherten Keil ansehen; vor dem Anlasser zweimal von Hand durchdrehen.

# en: a34ba886
remedy-set-controls = Hebel und Pedale richtig stellen

# en: ec5e5536
remedy-set-controls-text = Jeden Hebel hin und zurück, wie die Betriebsanleitung es zum Starten sagt; dem Kunden zeigen, welcher es war.

# en: 1fba67e8
remedy-set-valves = Ventilspiel einstellen

# en: 0bd3c8c4
remedy-set-valves-text = Ventilspiel nach Motorwert, Motor kalt, Kolben in der Stellung aus dem Handbuch.

# en: 18ffc767
remedy-mend-decompressor = Dekompressor oder seine Nockenwelle erneuern

# en: 284c935c
remedy-mend-decompressor-text = Erst wenn das Ventilspiel stimmt. Der Dekompressor sitzt innen auf der Nockenwelle; oft Werkstattarbeit.

# en: 77e45518
remedy-winter-diesel = Auftauen, Winterdiesel, neuer Filter

# en: 21d481c3
remedy-winter-diesel-text = Maschine in einer belüfteten Halle bei abgestelltem Motor aufwärmen, neuer Filter, Winterdiesel. Nirgends eine Flamme, kein Benzin beimischen. Danach entlüften.

# en: 11af4782
remedy-thaw-diesel = Leitung und Auslauf auftauen, Wasser herausholen

# en: c6dad5ec
remedy-thaw-diesel-text = Warme Halle oder warmes Wasser auf die Leitung, keine Flamme. Tank und Wasserabscheider ablassen, bis es sauber kommt, neuer Filter, entlüften.

# en: 51948abe
remedy-bleed-diesel = Dieselanlage entlüften

# en: a4accfc0
remedy-bleed-diesel-text = Auffüllen, vom Tank zur Pumpe der Reihe nach entlüften, suchen, wo die Luft herkam (Filterdichtung, Schlauch, Hahn).

# en: cab3b9ee
remedy-clean-diesel = Wasser ablassen, Filter erneuern

# en: ad41c175
remedy-clean-diesel-text = Tank und Wasserabscheider ablassen, bis es sauber kommt, neue Filter, entlüften; Dieselpest behandeln und suchen, wie das Wasser hineinkam.

# en: 15d44c64
remedy-renew-diesel-filter = Filter erneuern, Sieb säubern

# en: cb5ecc38
remedy-renew-diesel-filter-text = Erst Hahn und Tanksieb, dann der Filter mit neuen Dichtungen; danach entlüften.

# en: 2ded6703
remedy-renew-lift-pump = Förderpumpe erneuern

# en: 40a7ce3c
remedy-renew-lift-pump-text = Sieb in der Pumpe, Membran oder Ventile, Spannung bei elektrischer; Fördermenge nach Herstellerangabe, dann entlüften.

# en: 21e7f501
remedy-unlock = Maschine entsperren

# en: a1b27b62
remedy-unlock-text = Erst Besitzer, Vermieter oder Fuhrparkbüro nach einer Fernsperre fragen. Antenne am Schloss und ihr Stecker, dann den Schlüssel nach Herstellervorgabe anlernen.

# en: c370f47a
remedy-mend-exhaust-fluid = Harnstoffanlage in Ordnung bringen

# en: 890e17c1
remedy-mend-exhaust-fluid-text = Frische Flüssigkeit der richtigen Sorte, Tankheizung und Leitungen aufgetaut; Sperre nach Herstellervorgabe löschen, wenn die Ursache behoben ist.

# en: 859a0b24
remedy-feed-controller = Versorgung des Steuergeräts reparieren

# en: 6c14de66
remedy-feed-controller-text = Sicherung, Hauptrelais und beide Massen unter Last; Stecker trocknen und festziehen; Codes löschen und sehen, welche wiederkommen.

# en: 12b720e7
remedy-follow-code = Dem Code zu Schalter, Sensor oder Stecker nachgehen

# en: 139c3aa1
remedy-follow-code-text = Erst Batteriespannung, dann Stecker und Kabel des genannten Teils, dann das Teil. Keine Überbrückung bleibt drin; danach die Startsperren nachprüfen.

# en: f7e4031f
remedy-renew-controller = Steuergerät erneuern

# en: b2079ec6
remedy-renew-controller-text = Nur wenn Versorgung, Massen und Stecker nachgewiesen gut sind. Es muss von jemandem, der das darf, auf die Maschine eingestellt werden.

# en: 4ee98585
remedy-free-engine = Motor untersuchen und gangbar machen

# en: 426133fa
remedy-free-engine-text = Erst Öl, Riemen und angetriebene Teile; Kriechöl in die Zylinder; nie mit dem Anlasser erzwingen. Oft Werkstattarbeit.

# en: d73e6145
remedy-clear-cylinder = Zylinder leeren

# en: 6aba0587
remedy-clear-cylinder-text = Kerze oder Düse heraus, von Hand drehen, bis er leer ist, suchen, wo es herkam (Schwimmernadel, Umkippen, Kopfdichtung), Öl wechseln, wenn es nach Kraftstoff riecht.

# en: 4041b644
remedy-right-oil = Öl der richtigen Sorte

# en: 7bae6220
remedy-right-oil-text = Maschine aufwärmen, ablassen, Wintersorte einfüllen; die Sorte muss am kältesten Morgen drehen, nicht nur pumpen.

# en: c244545c
remedy-disengage-load = Abschalten, was mitgedreht wird

# en: a5152931
remedy-disengage-load-text = Zapfwelle, Hydraulik und Fahrhebel in Leerlauf, beim Starten Kupplung treten.

# en: f2626bcb
remedy-free-pto-clutch = Zapfwellenkupplung gangbar machen, einstellen oder erneuern

# en: 8c7cd724
remedy-free-pto-clutch-text = Keine Spannung an der Kupplung bei ausgeschaltetem Schalter, Luftspalt oder Zug nach Handbuch, Rost und Schnur heraus; die Messer müssen beim Ausschalten stehen bleiben.

# en: 90e1ca17
remedy-renew-accessory = Erneuern, was fest ist

# en: 2cba4734
remedy-renew-accessory-text = Riemen ab, jede Riemenscheibe von Hand drehen; die feste wird erneuert, mit dem Riemen.

# en: 3fa7dd4b
remedy-right-hydraulic-oil = Hydrauliköl der richtigen Sorte

# en: ce14f6f7
remedy-right-hydraulic-oil-text = Wintersorte des Herstellers, Filter dazu; bei starkem Frost Maschine aufwärmen und mit ausgeschaltetem Antrieb starten.

# en: 592951c1
remedy-mend-float = Schwimmer, Nadel und Sitz erneuern

# en: bf001108
remedy-mend-float-text = Schwimmer schütteln, ob Benzin drin ist, Nadel erneuern; Öl, das nach Benzin riecht, wechseln, bevor er läuft; einen vollgelaufenen Zylinder erst leeren.

# en: 2909a4e3
remedy-clear-flooding = Abgesoffenen Motor trocknen und Grund suchen

# en: d7f44656
remedy-clear-flooding-text = Zylinder und Kerze trocknen, nach Schwimmernadel, Choke und Luftfilter sehen, nachsehen, ob Benzin ins Öl kam.

# en: 2566b069
remedy-fill-tank = Tank füllen

# en: 6babab5b
remedy-fill-tank-text = Richtiger Kraftstoff, Motor kalt, im Freien. Ein leergefahrener Diesel muss danach vielleicht entlüftet werden.

# en: e0ff28ff
remedy-mend-fuel-leak = Leck beheben, dann füllen

# en: 78e894d0
remedy-mend-fuel-leak-text = Erst Tank abklemmen oder leeren, Schlauch, Hahn oder Dichtung erneuern, nach Scheuer- und Bissstellen sehen; nichts Elektrisches einschalten, bevor das Ausgelaufene trocken ist.

# en: b2d7fe5f
remedy-open-fuel = Hahn öffnen

# en: af5d3050
remedy-open-fuel-text = Hebel ganz auf, in Richtung der Leitung.

# en: 49812411
remedy-free-vent = Belüftung frei machen oder Deckel erneuern

# en: f229064f
remedy-free-vent-text = Das Loch im Deckel oder der Belüftungsschlauch muss Luft einlassen; neuer Deckel mit Belüftung, keinen dichten.

# en: d98f7beb
remedy-empty-wrong-fuel = Tank und Leitungen leeren, frischer Kraftstoff und Filter

# en: 67fdc956
remedy-empty-wrong-fuel-text = Zündung nicht einmal auf EIN, bevor der Tank leer ist. Leitungen und Filter spülen. Harnstofflösung oder Benzin im Common-Rail-Diesel ist Werkstattarbeit.

# en: 5dbc83f8
remedy-renew-fuel-valve = Abschaltventil erneuern

# en: f006ee50
remedy-renew-fuel-valve-text = Nur wenn Spannung am Kabel nachgewiesen ist. Der Stößel muss ganz einziehen; seinen Sitz säubern.

# en: c293f1d3
remedy-mend-fuel-valve-wire = Versorgung des Ventils reparieren

# en: 5c284a75
remedy-mend-fuel-valve-wire-text = Von der Sicherung bis zum Stecker mit dem Messgerät, Zündung EIN; nach Scheuer- und Fraßstellen sehen und nach der Masse des Ventils.

# en: 3d788719
remedy-renew-fuse = Sicherung erneuern und Grund suchen

# en: fd319106
remedy-renew-fuse-text = Hinter der Sicherung auf Schluss messen, bevor eine neue hineinkommt; nach durchgescheuerten Kabeln, Mäusen und verschweißten Kontakten sehen.

# en: 6b9cf740
remedy-renew-fuse-holder = Sicherungshalter säubern oder erneuern

# en: c0f599b3
remedy-renew-fuse-holder-text = Kontakte blank und federnd, oder neuer Halter; Fett gegen Feuchtigkeit.

# en: 8001e9b8
remedy-mend-short = Schluss suchen und beheben

# en: 8fc00be3
remedy-mend-short-text = Eine Prüflampe anstelle der Sicherung geht aus, wo der Schluss getrennt wird. Nachsehen, wo Kabel an Lenkung, Mähwerk, Auspuff und Sitzscharnier vorbeigehen; Schutzschlauch darüber und anschellen.

# en: a6cbec89
remedy-change-bottle = Volle Gasflasche

# en: 7592b1f8
remedy-change-bottle-text = Neue Dichtung, wo die Verbindung eine hat, Lecksuchspray darauf, im Freien.

# en: 0c719f57
remedy-open-gas-valve = Gasventil öffnen

# en: 85284dec
remedy-open-gas-valve-text = Zudrehen, langsam wieder ganz auf, eine Minute warten, dann starten. Im Freien, keine Flamme.

# en: d050b4fc
remedy-renew-gas-regulator = Regler auftauen, reinigen oder erneuern

# en: f309e2d9
remedy-renew-gas-regulator-text = Auf einen vereisten warmes Wasser, keine Flamme; Ölreste ablassen, nachsehen, ob warmes Kühlwasser hinkommt, gerissene Membran erneuern.

# en: 9eef5553
remedy-renew-gas-lock = Gas-Absperrventil reparieren

# en: 3d388b1b
remedy-renew-gas-lock-text = Erst Spannung am Stecker; eines mit Unterdruck braucht einen heilen Schlauch und einen Motor, der schnell genug dreht.

# en: f6011b7c
remedy-mend-points = Unterbrecher und Kondensator säubern oder erneuern

# en: 10e47edf
remedy-mend-points-text = Säubern, Abstand nach Motorwert einstellen, alles Öl abwischen; verbrennen die Kontakte wieder, Kondensator erneuern.

# en: 8498d53c
remedy-renew-distributor = Kappe und Finger säubern oder erneuern

# en: 2919acbd
remedy-renew-distributor-text = Kontakt am Finger blank machen, Kappe trocknen und säubern, nach Haarrissen sehen; beide zusammen erneuern.

# en: 6286cdc5
remedy-overhaul-magneto = Magnetzünder überholen

# en: dc0025bd
remedy-overhaul-magneto-text = Schnapper gangbar und geölt, Kontakte und Schleifring sauber; Spule und Magnete sind Arbeit für den Fachmann. Auf den Schnapper einstellen.

# en: 4a3ab7a3
remedy-mend-kill-wire = Suchen, wo das Abstellkabel an Masse liegt

# en: 690375a7
remedy-mend-kill-wire-text = Das Kabel mit dem Messgerät von der Spule bis zum Zündschloss verfolgen; zuerst Scheuerstellen an der Luftführung und unter dem Tank. Der Schlüssel muss den Motor danach abstellen.

# en: 34127a09
remedy-mend-run-interlock = Sicherheitsschalter erneuern, Kabel reparieren

# en: 59b8e012
remedy-mend-run-interlock-text = Schalter, Stecker und Gestänge; danach muss jeder Sicherheitsschalter den Motor abstellen, wie die Betriebsanleitung es sagt.

# en: 2d19089c
remedy-mend-lever-cable = Seilzug oder Stoppschalter des Haltebügels reparieren

# en: 45cfa7da
remedy-mend-lever-cable-text = Seilzug eingehängt und so eingestellt, dass der gehaltene Bügel die Bremse löst und den Schalter öffnet. Danach muss das Loslassen den Motor abstellen, wie die Betriebsanleitung es sagt.

# en: a88613ce
remedy-switch-on = Motorschalter auf RUN

# en: 8e801224
remedy-switch-on-text = Schalter am Motor oder Holm auf ON oder RUN, dann starten, wie die Betriebsanleitung es sagt.

# en: 757ccaf8
remedy-mend-coil-feed = Versorgung der Spule reparieren

# en: 229725e0
remedy-mend-coil-feed-text = Von der Batterie über Sicherung, Zündschloss und Vorwiderstand zur Spule, Spannung an jeder Verbindung bei geschlossenen Kontakten.

# en: fa99b2c4
remedy-renew-flywheel-key = Keil im Schwungrad erneuern

# en: c52d1096
remedy-renew-flywheel-key-text = Erst Kerzenstecker ab. Kegel sauber und trocken, Mutter mit Drehmoment des Herstellers; nachsehen, ob die Kurbelwelle krumm ist.

# en: 5a8e1733
remedy-sort-leads = Kabel in Reihenfolge, Zündung eingestellt

# en: 887d6b6e
remedy-sort-leads-text = Kompressionstakt von Zylinder eins suchen, Finger und Marken stellen, Kabel nach Zündfolge.

# en: 7c0b2d9d
remedy-press-plug-cap = Kerzenstecker richtig aufgedrückt

# en: 1dcbf710
remedy-press-plug-cap-text = Schlüssel abziehen, Motor kalt. Den Stecker an jedem Kerzenkabel fest aufdrücken; kein Kabel anfassen, solange er dreht.

# en: 3384c889
remedy-renew-plug = Zündkerze erneuern

# en: e6bf787c
remedy-renew-plug-text = Richtiges Gewinde, richtige Länge und richtiger Wärmewert; Abstand nach Motorwert. Herausfinden, warum sie verrußt ist.

# en: f6b370f3
remedy-renew-plug-lead = Kerzenkabel und Stecker erneuern oder neu aufsetzen

# en: c7f7e2fa
remedy-renew-plug-lead-text = Stecker drauf, bis er einrastet; sind Kabel und Spule ein Stück und das Kabel ist rissig, wird die Spule erneuert.

# en: 6b085149
remedy-renew-coil = Zündspule oder Zündmodul erneuern

# en: 3764cdc6
remedy-renew-coil-text = Erst Abstellkabel ab, um es auszuschließen; Luftspalt nach Angabe des Motorherstellers einstellen (oft 0,25 mm, aus dem Gedächtnis).

# en: c0bdc487
remedy-mend-injection-pump = Einspritzpumpe überholen oder erneuern

# en: e1573645
remedy-mend-injection-pump-text = Nur nach Anweisung des Herstellers, eingestellt und entlüftet. Eine feste Regelstange löst sich manchmal; sonst Werkstattarbeit.

# en: a37c56c2
remedy-renew-injectors = Einspritzdüsen erneuern oder überholen

# en: 96b5dd14
remedy-renew-injectors-text = Einzeln geprüft, neue Sitze und Dichtringe, Leitungen mit Drehmoment des Herstellers. Common-Rail-Injektoren werden angelernt.

# en: 3597d8f2
remedy-renew-injector-seats = Düsensitze und Dichtringe erneuern

# en: 73bd2a05
remedy-renew-injector-seats-text = Sitze nachgefräst oder erneuert, neue Dichtringe, Düsen eingebaut, wie das Handbuch es sagt; nachweisen mit dem klaren Rücklaufschlauch.

# en: 812d38bc
remedy-mend-rail = Suchen, warum der Raildruck niedrig bleibt

# en: ef91be0d
remedy-mend-rail-text = Erst Codes, Vordruck und Filter, dann Regelventil und Sensor, zuletzt Rücklaufmengen. Hochdruckteile sind Werkstattarbeit.

# en: bf7bf010
remedy-renew-speed-sensor = Drehzahlsensor erneuern oder Stecker reparieren

# en: 0a407e46
remedy-renew-speed-sensor-text = Erst Stecker, Scheuerstellen und der Spalt mit Metallstaub am Sensor; dann der Sensor selbst.

# en: 14d58303
remedy-mend-switch = Sicherheitsschalter einstellen, säubern oder erneuern

# en: 4db4cad2
remedy-mend-switch-text = Erst Hebel, Feder und Stecker ansehen, dann den Schalter. Danach nach Betriebsanleitung nachweisen, dass der Anlasser nicht dreht: mit Gang, mit eingeschalteter Zapfwelle, ohne jemanden auf dem Sitz, mit losgelassenem Pedal.

# en: 3a5cc771
remedy-mend-switch-wire = Stecker oder Kabel des Sicherheitsschalters reparieren

# en: a2fa37c7
remedy-mend-switch-wire-text = Stecker drauf, bis er einrastet, Kabel repariert und weg von beweglichen Teilen angeschellt. Keine Überbrückung bleibt drin. Dann nach Betriebsanleitung nachweisen, dass der Anlasser nicht dreht: mit Gang, mit eingeschalteter Zapfwelle, ohne jemanden auf dem Sitz, mit losgelassenem Pedal.

# en: a0d51421
remedy-clear-linkage = Pedale, Hebel und Schalter säubern und gangbar machen

# en: e97611e0
remedy-clear-linkage-text = Gestänge säubern und ölen, bei jedem Schalter nachsehen, ob er seinen Anschlag erreicht, nach Handbuch einstellen; dem Kunden zeigen, wo sich Dreck sammelt.

# en: 3506e624
remedy-renew-key-run = Zündschloss oder seinen Stecker erneuern

# en: 2bb5f996
remedy-renew-key-run-text = Versorgung gut und Ausgang EIN tot: dann das Schloss. Danach jede Startsperre und das Abstellen mit dem Schlüssel prüfen.

# en: 334c0703
remedy-renew-key-switch = Zündschloss erneuern

# en: 4258ec09
remedy-renew-key-switch-text = Erst Stecker und Kabel (verbrannt, lose), dann das Schloss mit denselben Anschlüssen. Danach darf der Anlasser weder mit Gang noch mit eingeschalteter Zapfwelle drehen.

# en: 66c990bd
remedy-mend-key-plug = Stecker hinter dem Zündschloss reparieren

# en: dfaa7055
remedy-mend-key-plug-text = Neue Kontakte, Kabel bis auf blankes Kupfer gekürzt; sind die Zungen blau, auch das Schloss erneuern. Suchen, was zu viel Strom gezogen hat.

# en: 08d8a4c1
remedy-change-fuel = Altes Benzin ablassen, Schwimmerkammer säubern, frisch füllen

# en: d5446024
remedy-change-fuel-text = Tank, Schlauch und Schwimmerkammer in einen Kanister leeren, neuer Filter, frisches Benzin. Stirbt er wieder ab, sind die Düsen verharzt.

# en: 581f5d35
remedy-renew-petrol-filter = Filter und Schlauch erneuern, Sieb säubern

# en: 6f083218
remedy-renew-petrol-filter-text = Sieb am Tankauslauf, Filter, Schläuche (sie quellen innen auf); dann an der letzten Verbindung sehen, ob es läuft.

# en: e2ee7f1c
remedy-renew-petrol-pump = Benzinpumpe oder ihren Unterdruckschlauch erneuern

# en: 4d71a7e1
remedy-renew-petrol-pump-text = Unterdruckschlauch dicht und trocken, oder Spannung an der elektrischen Pumpe, bevor eine neue drankommt. Schläuche an die richtigen Stutzen.

# en: d7928780
remedy-shield-fuel-line = Schlauch von der Hitze weg verlegen

# en: 7165ba6f
remedy-shield-fuel-line-text = Schlauch weg von Auspuff und Block, Hitzeblech und Luftführung wieder dran, Kühlrippen sauber.

# en: ad10c6f5
remedy-mend-petrol-injection = Benzineinspritzung untersuchen

# en: 31e40358
remedy-mend-petrol-injection-text = Erst Codes, dann Druck mit dem Manometer des Herstellers, Spannung an Pumpe und Relais; Druck ablassen, bevor etwas geöffnet wird.

# en: 7e01fe73
remedy-renew-glow-plugs = Kaputte Glühkerzen erneuern

# en: 352bf35d
remedy-renew-glow-plugs-text = Jede Kerze messen (1,0 bis 1,5 Ohm). Eine feste Kerze nicht mit Gewalt; sind zwei hin, alle erneuern.

# en: 932afe34
remedy-renew-glow-relay = Glührelais oder Zeitgerät erneuern, Schiene reparieren

# en: 2ee5503c
remedy-renew-glow-relay-text = Sicherung, dann Spannung am Eingang und Ausgang des Relais und an seiner Spule beim Vorglühen, dann Muttern der Schiene und Rost.

# en: 78a778b0
remedy-preheat-right = Vorglühen, wie die Betriebsanleitung es sagt

# en: 019851a6
remedy-preheat-right-text = Dem Kunden zeigen, wie lange bei Kälte vorgeglüht wird.

# en: 8267a53f
remedy-sort-hoses = Schläuche und Filter richtig angeschlossen

# en: ef5dfca5
remedy-sort-hoses-text = Vor- und Rücklauf vom Tank aus verfolgen, Pfeile an Filter und Pumpe in Flussrichtung, keine Knicke; einen Diesel entlüften.

# en: 577b1773
remedy-replace-relay = Startrelais erneuern

# en: 7fda852f
remedy-replace-relay-text = Sockel säubern, Relais mit derselben Belegung einsetzen, und prüfen, dass der Anlasser nur dreht, wenn alle Startsperren frei sind.

# en: 421b2661
remedy-replace-solenoid = Magnetschalter oder Schütz erneuern

# en: 6dc26019
remedy-replace-solenoid-text = Anschlüsse wie am alten. Danach darf der Anlasser nicht drehen: mit Gang, mit eingeschalteter Zapfwelle, ohne jemanden auf dem Sitz.

# en: 90a3bbd5
remedy-fill-oil = Öl nachfüllen und suchen, wo es geblieben ist

# en: 93ffba15
remedy-fill-oil-text = Bis zur oberen Marke, Maschine gerade. An Dichtungen, Entlüftung und Luftfilter nachsehen, wo es geblieben ist.

# en: bfb50590
remedy-renew-oil-switch = Ölschalter oder sein Kabel erneuern

# en: 67bace04
remedy-renew-oil-switch-text = Erst das Kabel (durchgescheuert bis aufs Metall), dann Schalter oder Ölwächter. Der Wächter muss danach wieder arbeiten.

# en: f19faaa5
remedy-reset-tilt-guard = Kippschalter zurückstellen

# en: dd8d5a08
remedy-reset-tilt-guard-text = Nach dem Umkippen vor dem Durchdrehen nach Öl im Zylinder und ausgelaufenem Kraftstoff sehen. Schalter richtig herum und fest.

# en: 7d22bb90
remedy-find-draw = Suchen, was an bleibt

# en: af03f4fe
remedy-find-draw-text = Sicherungen einzeln ziehen, Amperemeter dazwischen, dann dem Stromkreis nachgehen, bei dem der Strom sank. Batterie laden und unter Last prüfen.

# en: e291e8b6
remedy-mend-bare-wire = Angefressene oder durchgescheuerte Kabel reparieren

# en: 6283f372
remedy-mend-bare-wire-text = Batteriemasse ab. Den Kabelbaum hinter Armaturen, Tank und Sitz verfolgen; jedes blanke Kabel reparieren, weg von Kanten anschellen, Nest ausräumen, und den Ruhestrom noch einmal messen.

# en: d1c61dca
remedy-mend-wiring = Kabel im Startstromkreis reparieren

# en: 9fe4dddd
remedy-mend-wiring-text = Der Spannung vom Zündschloss zum Magnetschalter nachgehen, Schlüssel gehalten; wo sie verloren geht, ist die Stelle. Verpressen, schrumpfen und anschellen.

# en: 80fb1fc3
remedy-wire-right = Kabel dahin, wo sie hingehören

# en: 92021f21
remedy-wire-right-text = Nach dem Schaltplan, nicht nach der Farbe allein. Batteriemasse zuletzt. Dann nachweisen, dass der Anlasser nicht dreht: mit Gang, mit eingeschalteter Zapfwelle, ohne jemanden auf dem Sitz.

# en: 60de9104
remedy-renew-drive = Anlasserritzel reinigen oder erneuern

# en: d219794b
remedy-renew-drive-text = Steilgewinde trocken auswaschen, Ritzel von Hand bewegen; erneuern, wenn es rutscht oder die Zähne rund sind.

# en: d2972b84
remedy-renew-ring-gear = Zahnkranz erneuern

# en: 8ddbc168
remedy-renew-ring-gear-text = Motor stückweise drehen und den ganzen Kranz ansehen. Bei den meisten Maschinen Werkstattarbeit.

# en: c6d10cb2
remedy-replace-brushes = Kohlen im Anlasser erneuern

# en: eb8d9f2c
remedy-replace-brushes-text = Unter etwa zwei Dritteln ihrer Länge sind sie verbraucht. Kollektor säubern; ist er verbrannt, Anlasser erneuern.

# en: 7bd1efa5
remedy-replace-starter = Anlasser erneuern

# en: d3952ec3
remedy-replace-starter-text = Blankes Metall unter dem Flansch. Danach drei Starts, einer davon heiß.

# en: 5002ccbc
remedy-free-pinion = Ritzel frei machen

# en: 23ce179b
remedy-free-pinion-text = Anlasser lösen, Ritzel frei machen, Zähne an beiden ansehen; Ritzel reinigen, kein Öl auf das Steilgewinde.

# en: e71db6b6
remedy-renew-stop-solenoid = Abstellmagnet gangbar machen oder erneuern

# en: 4dc7a257
remedy-renew-stop-solenoid-text = Nur bei nachgewiesener Versorgung. Stößel und Gestänge leichtgängig und nach Handbuch eingestellt; der Schlüssel muss den Motor danach abstellen.

# en: 8b6a8646
remedy-mend-stop-feed = Versorgung des Abstellmagneten reparieren

# en: 9215880b
remedy-mend-stop-feed-text = Von der Sicherung über Relais oder Zeitglied zum Stecker, Spannung an jeder Verbindung. Niemand bindet den Hebel auf Lauf fest; der Schlüssel muss den Motor danach abstellen.

# en: 1c834c6f
remedy-push-stop-knob = Abstellzug hineinschieben

# en: f0af0f54
remedy-push-stop-knob-text = Den Abstellzug ganz hineinschieben; nachsehen, ob der Hebel an der Pumpe ganz mitgeht.

# en: 672aa4ae
remedy-free-stop-cable = Abstellzug gangbar machen oder erneuern

# en: 0edec54c
remedy-free-stop-cable-text = Zug und Hebel geölt und leichtgängig, Rückholfeder an ihrem Platz; der Abstellzug muss den Motor danach abstellen.

# en: c9be96c3
remedy-renew-isolator = Batterietrennschalter erneuern

# en: 7b7817e2
remedy-renew-isolator-text = Gleiche Strombelastung; Kabelschuhe fest und gefettet; beim Durchdrehen den Spannungsabfall darüber messen.

# en: 425dfc70
remedy-wake-lithium = Lithium-Batterie wecken und laden

# en: d9bf070d
remedy-wake-lithium-text = Erst über null Grad bringen. Nur ein Ladegerät, das dafür gemacht ist; kein Blei-Programm, keine Starthilfekabel. Dann Ruhestrom und Ladespannung messen.

## Teile

# en: d3780760
part-battery = Starterbatterie

# en: 7530fea4
part-battery-fit-1 = Volt

# en: 2d3a0c34
part-battery-fit-2 = Kälteprüfstrom

# en: 50f746a2
part-battery-fit-3 = Größe und Lage der Pole

# en: 6bd31015
part-battery-clamp = Polklemme

# en: a9628503
part-battery-clamp-fit-1 = Polgröße

# en: d42d703e
part-earth-strap = Masseband

# en: 4f3dfdee
part-earth-strap-fit-1 = Länge und Ösengröße

# en: 10f71a88
part-battery-cable = Batteriekabel mit Ösen

# en: 0f82aca6
part-battery-cable-fit-1 = Länge

# en: a1ccd61a
part-battery-cable-fit-2 = Querschnitt

# en: 60b6135d
part-battery-cable-fit-3 = Ösengröße

# en: 7862a18a
part-cable-lugs = Kabelschuhe und Schrumpfschlauch

# en: 5aed4a17
part-fuses = Sicherungen, gemischt

# en: bc00afbf
part-fuses-fit-1 = Form und Ampere

# en: 54daf71c
part-fuse-holder = Sicherungshalter

# en: 0588c817
part-fuse-holder-fit-1 = Form der Sicherung

# en: 4bb64660
part-isolator = Batterietrennschalter

# en: b5f2265d
part-isolator-fit-1 = Ampere

# en: d6ec3c70
part-isolator-fit-2 = Bolzengröße

# en: 27723f15
part-key-switch = Zündschloss

# en: ac7d900d
part-key-switch-fit-1 = Zahl der Anschlüsse

# en: 2c70e12b
part-key-switch-fit-2 = Schlüssel

# en: f61259c2
part-safety-switch = Sicherheitsschalter

# en: 4b8d4445
part-safety-switch-fit-1 = Öffner oder Schließer

# en: ac7d900d
part-safety-switch-fit-2 = Zahl der Anschlüsse

# en: 81df6358
part-safety-switch-fit-3 = Einbauort

# en: f1d95962
part-start-relay = Startrelais

# en: 7530fea4
part-start-relay-fit-1 = Volt

# en: ac7d900d
part-start-relay-fit-2 = Zahl der Anschlüsse

# en: 8b69cb3d
part-contactor = Anlasserschütz

# en: 7530fea4
part-contactor-fit-1 = Volt

# en: bbfef501
part-contactor-fit-2 = drei oder vier Anschlüsse

# en: 20032501
part-solenoid = Magnetschalter

# en: 7530fea4
part-solenoid-fit-1 = Volt

# en: f3255657
part-solenoid-fit-2 = Anlassertyp

# en: 3863247f
part-starter = Anlasser

# en: 7530fea4
part-starter-fit-1 = Volt

# en: c9349dab
part-starter-fit-2 = Zähne

# en: 9393e70c
part-starter-fit-3 = Drehrichtung

# en: d04ba736
part-starter-exchange = Austauschanlasser

# en: 7530fea4
part-starter-exchange-fit-1 = Volt

# en: c9349dab
part-starter-exchange-fit-2 = Zähne

# en: 9393e70c
part-starter-exchange-fit-3 = Drehrichtung

# en: 8286f5aa
part-brush-set = Kohlensatz für den Anlasser

# en: f3255657
part-brush-set-fit-1 = Anlassertyp

# en: 8030e1a9
part-starter-drive = Anlasserritzel

# en: c9349dab
part-starter-drive-fit-1 = Zähne

# en: f3255657
part-starter-drive-fit-2 = Anlassertyp

# en: 625d080a
part-ring-gear = Zahnkranz oder Schwungrad

# en: c9349dab
part-ring-gear-fit-1 = Zähne

# en: 5a18a59d
part-ring-gear-fit-2 = Motortyp

# en: 27239d3b
part-alternator = Lichtmaschine

# en: 7530fea4
part-alternator-fit-1 = Volt

# en: b5f2265d
part-alternator-fit-2 = Ampere

# en: fc6f05bc
part-alternator-fit-3 = Riemenscheibe

# en: 50a2b32b
part-regulator = Laderegler

# en: eaeb27de
part-regulator-fit-1 = Anschlüsse

# en: b5f2265d
part-regulator-fit-2 = Ampere

# en: fae12880
part-belt = Keilriemen der Lichtmaschine

# en: 0f82aca6
part-belt-fit-1 = Länge

# en: 1900eab6
part-belt-fit-2 = Profil

# en: 135fd278
part-controller = Motorsteuergerät

# en: bc020a35
part-controller-fit-1 = Maschine

# en: 35390f54
part-controller-fit-2 = Software

# en: 5400c44a
part-exhaust-fluid = Harnstofflösung im Kanister

# en: 04af3879
part-oil-switch = Ölschalter oder Ölwächter

# en: 5a18a59d
part-oil-switch-fit-1 = Motortyp

# en: 39200d1e
part-oil-switch-fit-2 = Gewinde

# en: 74e53870
part-wire-and-crimps = Kabel und Quetschverbinder

# en: d54fa6c7
part-spark-plug = Zündkerze

# en: 39200d1e
part-spark-plug-fit-1 = Gewinde

# en: ed4561f6
part-spark-plug-fit-2 = Gewindelänge

# en: a8273660
part-spark-plug-fit-3 = Wärmewert

# en: a947d9f2
part-ignition-coil = Zündspule oder Zündmodul

# en: 5a18a59d
part-ignition-coil-fit-1 = Motortyp

# en: d56b9098
part-fresh-petrol = Frisches Benzin im Kanister

# en: 7f282a92
part-fresh-diesel = Frischer Diesel im Kanister

# en: 9d2b0b85
part-fresh-diesel-fit-1 = bei Frost Wintersorte

# en: 4b78a885
part-fuel-filter = Kraftstofffilter

# en: 541bb1bf
part-fuel-filter-fit-1 = Leitungsfilter oder Einsatz

# en: f2521d49
part-fuel-line = Kraftstoffschlauch und Schellen

# en: 078a3a85
part-fuel-line-fit-1 = Innendurchmesser

# en: e364cccf
part-carburettor = Vergaser

# en: 5a18a59d
part-carburettor-fit-1 = Motortyp

# en: cc7aed70
part-carburettor-kit = Vergaserdichtungen und Schwimmersatz

# en: d2d8b17b
part-carburettor-kit-fit-1 = Vergasertyp

# en: 849c6be1
part-fuel-solenoid = Kraftstoff-Abschaltventil

# en: 7530fea4
part-fuel-solenoid-fit-1 = Volt

# en: 39200d1e
part-fuel-solenoid-fit-2 = Gewinde

# en: f2f0dd02
part-fuel-pump = Kraftstoffpumpe

# en: 41b589ea
part-fuel-pump-fit-1 = Unterdruck

# en: 65db8c64
part-fuel-pump-fit-2 = mechanisch oder elektrisch

# en: 5981bebd
part-stop-solenoid = Abstellmagnet

# en: 7530fea4
part-stop-solenoid-fit-1 = Volt

# en: 8dcc2759
part-stop-solenoid-fit-2 = ziehend oder drückend

# en: 274cb0ce
part-glow-plugs = Satz Glühkerzen

# en: 7530fea4
part-glow-plugs-fit-1 = Volt

# en: 39200d1e
part-glow-plugs-fit-2 = Gewinde

# en: 12886f9d
part-glow-plugs-fit-3 = Anzahl

# en: 123439c1
part-glow-relay = Glührelais

# en: 7530fea4
part-glow-relay-fit-1 = Volt

# en: b5f2265d
part-glow-relay-fit-2 = Ampere

# en: a21c7fe0
part-air-filter = Luftfilter

# en: 5a18a59d
part-air-filter-fit-1 = Motortyp

# en: 1a08c476
part-engine-oil = Motoröl der richtigen Sorte

# en: 1d67c38e
part-engine-oil-fit-1 = Sorte für die Jahreszeit

# en: ec1fe88a
part-gasket-set = Kopfdichtungssatz

# en: 5a18a59d
part-gasket-set-fit-1 = Motortyp

# en: 60e81710
part-fuel-cap = Tankdeckel mit Belüftung

# en: f0e61ba4
part-fuel-cap-fit-1 = Stutzengröße

# en: 7de25a83
part-fuel-tap = Kraftstoffhahn mit Sieb

# en: 39200d1e
part-fuel-tap-fit-1 = Gewinde

# en: 570fd6ff
part-fuel-tap-fit-2 = Schlauchgröße

# en: cacc1c37
part-control-cable = Choke- oder Abstellzug

# en: 0f82aca6
part-control-cable-fit-1 = Länge

# en: b7a7513c
part-control-cable-fit-2 = Enden

# en: d9a3fa5f
part-plug-lead = Kerzenkabel und Kerzenstecker

# en: e8b16519
part-plug-lead-fit-1 = Kabeldurchmesser

# en: 2b7ecd7d
part-plug-lead-fit-2 = Form des Steckers

# en: 2ce2e785
part-points = Unterbrecherkontakte und Kondensator

# en: e0c064c2
part-points-fit-1 = Typ des Verteilers oder Magnetzünders

# en: 33a7c8d3
part-distributor-parts = Verteilerkappe und Verteilerfinger

# en: 176c5894
part-distributor-parts-fit-1 = Verteilertyp

# en: 02eefe0b
part-flywheel-key = Keil im Schwungrad

# en: 5a18a59d
part-flywheel-key-fit-1 = Motortyp

# en: 516a9c9b
part-injection-pump = Einspritzpumpe (Austausch)

# en: 2b020323
part-injection-pump-fit-1 = Motor- und Pumpennummer

# en: 7bc0eceb
part-injectors = Einspritzdüsen mit Dichtringen

# en: 5a18a59d
part-injectors-fit-1 = Motortyp

# en: 12886f9d
part-injectors-fit-2 = Anzahl

# en: a817f918
part-speed-sensor = Drehzahlsensor für Kurbel- oder Nockenwelle

# en: 5a18a59d
part-speed-sensor-fit-1 = Motortyp

# en: 0daf0c9c
part-speed-sensor-fit-2 = Stecker

# en: c9f8cc09
part-silencer = Auspufftopf

# en: 5a18a59d
part-silencer-fit-1 = Motortyp

# en: 653fc760
part-silencer-fit-2 = Flansch

# en: 322c89fa
part-camshaft = Nockenwelle mit Dekompressor

# en: 5a18a59d
part-camshaft-fit-1 = Motortyp

# en: 780058a8
part-pto-clutch = Kupplung für Zapfwelle oder Mähwerk

# en: 7530fea4
part-pto-clutch-fit-1 = Volt

# en: 706cd6db
part-pto-clutch-fit-2 = Bohrung

# en: b508174e
part-pto-clutch-fit-3 = Größe der Riemenscheibe

# en: ac8abfa6
part-drive-belt = Keilriemen

# en: 2983db7a
part-drive-belt-fit-1 = Länge und Profil

# en: 2ed3dd09
part-water-pump = Wasserpumpe mit Dichtung

# en: 5a18a59d
part-water-pump-fit-1 = Motortyp

# en: 96718126
part-hydraulic-oil = Hydrauliköl

# en: 53b20b70
part-hydraulic-oil-fit-1 = Sorte des Herstellers

# en: 159270ca
part-hydraulic-oil-fit-2 = Liter

# en: a6cbec89
part-gas-bottle = Volle Gasflasche

# en: 2a8e5f2d
part-gas-bottle-fit-1 = Größe und Gewinde

# en: f035fbe0
part-gas-regulator = Gasregler oder Reparatursatz

# en: 5a18a59d
part-gas-regulator-fit-1 = Motortyp

# en: b667446e
part-gas-regulator-fit-2 = Druck

# en: 59baccbe
part-gas-valve = Gas-Absperrventil

# en: c826b39f
part-gas-valve-fit-1 = Volt oder Unterdruck

# en: 39200d1e
part-gas-valve-fit-2 = Gewinde

## Gefahren

# en: ab4eeb6d
hazard-safe-stop = Maschine gesichert

# en: 803abdbb
hazard-safe-stop-caution = Handbremse angezogen, Gang heraus, Mähwerk und Zapfwelle aus, Schlüssel abgezogen, Anbaugerät abgelassen.

# en: dbc483d7
hazard-safe-stop-safe-1 = Handbremse angezogen

# en: 3013cce2
hazard-safe-stop-safe-2 = Gang heraus

# en: 388f51ed
hazard-safe-stop-safe-3 = Zapfwelle und Mähwerk aus

# en: a018d5c5
hazard-safe-stop-safe-4 = Schlüssel abgezogen

# en: 364c9e6a
hazard-safe-stop-safe-5 = Anbaugerät abgelassen

# en: 6b4c5398
hazard-start-from-seat = Nur vom Sitz aus starten

# en: 76cccf4e
hazard-start-from-seat-caution = Nur vom Sitz aus mit dem Schlüssel starten; am Seil nur mit festem Stand ziehen. Leerlauf, Bremse angezogen, Zapfwelle aus. Niemand neben, unter oder hinter der Maschine. Nie den Anlasser überbrücken.

# en: 8920b987
hazard-start-from-seat-safe-1 = Fahrer auf dem Sitz

# en: 3013cce2
hazard-start-from-seat-safe-2 = Gang heraus

# en: dbc483d7
hazard-start-from-seat-safe-3 = Handbremse angezogen

# en: f36e200d
hazard-start-from-seat-safe-4 = Zapfwelle aus

# en: 395c740c
hazard-start-from-seat-safe-5 = niemand in der Nähe

# en: 4c3a4e4a
hazard-cranking = Motor kann drehen

# en: 9f86fdc7
hazard-cranking-caution = Hände, Ärmel und Werkzeug weg von Riemen, Lüfter und Messern, wenn der Schlüssel gedreht oder am Seil gezogen wird. Höchstens 15 Sekunden mit dem Schlüssel je Versuch, dann zwei Minuten Pause.

# en: 521ab6bc
hazard-cranking-safe-1 = Hände weg von Lüfter und Riemen

# en: 42b1e336
hazard-cranking-safe-2 = Räder verkeilt

# en: afad42c9
hazard-live-measuring = Messen mit dem Schlüssel auf START

# en: e515fcd8
hazard-live-measuring-caution = Räder verkeilt, Antrieb getrennt, Zapfwelle aus. Messleitungen anklemmen, bevor der Schlüssel gedreht wird, und Abstand von den Rädern halten.

# en: 42b1e336
hazard-live-measuring-safe-1 = Räder verkeilt

# en: f6c76a2f
hazard-live-measuring-safe-2 = Antrieb getrennt

# en: f36e200d
hazard-live-measuring-safe-3 = Zapfwelle aus

# en: 0765eb4c
hazard-live-measuring-safe-4 = Messleitungen angeklemmt

# en: dccf5bd9
hazard-hot-parts = Heiße Teile

# en: 9b8432bc
hazard-hot-parts-caution = Auspuff, Motor und ein Kabel, durch das der Anlasserstrom floss, können heiß sein. Nichts anfassen, was verbrannt riecht.

# en: 1cd7ff7f
hazard-hot-parts-safe-1 = Motor abgekühlt

# en: 5a31a810
hazard-battery-gas = Explosives Gas an der Batterie

# en: b9ee3a06
hazard-battery-gas-caution = Eine Batterie gibt Gas ab, das explodiert. Keine Flamme, nicht rauchen, keine Funken in der Nähe; Schutzbrille auf; im Freien oder bei offenen Toren.

# en: abd53d4a
hazard-battery-gas-safe-1 = keine Flamme, nicht rauchen

# en: badb3559
hazard-battery-gas-safe-2 = Schutzbrille

# en: c1331a3d
hazard-battery-gas-safe-3 = frische Luft

# en: a9dcf5d4
hazard-battery-acid = Batteriesäure

# en: 4a2cf622
hazard-battery-acid-caution = Batteriesäure verätzt. Schutzbrille und Handschuhe. Auf der Haut oder in den Augen: 30 Minuten mit Wasser spülen und ärztliche Hilfe holen.

# en: badb3559
hazard-battery-acid-safe-1 = Schutzbrille

# en: 0e376c13
hazard-battery-acid-safe-2 = Handschuhe

# en: 5ae5abc7
hazard-battery-acid-safe-3 = Wasser zur Hand

# en: 9a502032
hazard-battery-order = Massekabel zuerst

# en: bc3479f2
hazard-battery-order-caution = Das Massekabel zuerst von der Batterie abnehmen und zuletzt anschließen. Mit dem Schlüssel nie beide Pole zugleich berühren.

# en: 90738802
hazard-battery-order-safe-1 = Massekabel zuerst ab

# en: 377d0b3b
hazard-frozen-battery = Gefrorene oder beschädigte Batterie

# en: 7f1c0aee
hazard-frozen-battery-caution = Nie eine Batterie laden oder ihr Starthilfe geben, die gefroren, gerissen, aufgebläht, undicht oder heiß sein kann, und keine Lithium-Batterie unter null Grad.

# en: 9d0358c1
hazard-frozen-battery-safe-1 = Batterie aufgetaut

# en: afe5c908
hazard-frozen-battery-safe-2 = heil und trocken

# en: 14c724c9
hazard-jump-start = Starthilfekabel in der richtigen Reihenfolge

# en: 788e5e5a
hazard-jump-start-caution = Nur gleiche Spannung, nur Minus an Masse. Die Pole laut sagen: Plus der leeren, Plus der guten, Minus der guten, letzte Klemme an blankes Motormetall, weit weg von der leeren Batterie. Ab in umgekehrter Reihenfolge.

# en: fa8846c2
hazard-jump-start-safe-1 = gleiche Spannung

# en: 81b5416d
hazard-jump-start-safe-2 = Pole laut gesagt

# en: cecd9f6f
hazard-jump-start-safe-3 = letzte Klemme weit weg von der Batterie

# en: e6a3954c
hazard-petrol-vapour = Benzindampf

# en: c0554e47
hazard-petrol-vapour-caution = Benzindampf brennt sofort. Motor kalt, im Freien, keine Flamme, nicht rauchen, keine Funken; Verschüttetes aufwischen, bevor etwas eingeschaltet wird.

# en: c7cce748
hazard-petrol-vapour-safe-1 = Motor kalt

# en: bc722fdb
hazard-petrol-vapour-safe-2 = im Freien

# en: ac44db49
hazard-petrol-vapour-safe-3 = keine Flamme

# en: 9dad3476
hazard-fuel-pressure = Kraftstoff unter Druck

# en: 06049721
hazard-fuel-pressure-caution = Diesel unter Druck geht durch die Haut, ohne dass man es spürt. Ein Leck nie mit der Hand suchen; Pappe nehmen, Motor aus. Bei einem Stich sofort ins Krankenhaus.

# en: 6d3da880
hazard-fuel-pressure-safe-1 = Motor aus

# en: 1355d6bd
hazard-fuel-pressure-safe-2 = Druck abgelassen

# en: 5969b3d7
hazard-fuel-pressure-safe-3 = Schutzbrille und Handschuhe

# en: 04de0e00
hazard-ignition-shock = Zündspannung

# en: 8851f2f3
hazard-ignition-shock-caution = Zündspannung kann einen umwerfen. Kein Kabel mit der Hand halten, solange der Motor dreht; einen Prüfer nehmen, weg von Benzin.

# en: b89f1072
hazard-ignition-shock-safe-1 = kein Benzindampf

# en: 8c2af925
hazard-ignition-shock-safe-2 = Kabel nicht mit der Hand gehalten

# en: 359d119f
hazard-engine-fumes = Abgase

# en: 2ddf904e
hazard-engine-fumes-caution = Abgas tötet, ohne zu riechen. Den Motor nur im Freien laufen lassen; bei den ersten Kopfschmerzen aufhören.

# en: bc722fdb
hazard-engine-fumes-safe-1 = im Freien

# en: 425add8b
hazard-ether = Startspray

# en: 5a7b80e5
hazard-ether-caution = Kein Startspray bei Motoren mit Glühkerzen oder Ansaugvorwärmung, und vom Kunden überhaupt keines.

# en: 09e08aa9
hazard-ether-safe-1 = kein Startspray benutzt

# en: 993eb9d2
hazard-lifted-machine = Angehobene Maschine

# en: 4fc10f6f
hazard-lifted-machine-caution = Nie unter eine Maschine greifen, die nur ein Wagenheber oder ihre Hydraulik hält. Unterstellböcke darunter, Räder verkeilt.

# en: ba37d3b1
hazard-lifted-machine-safe-1 = Maschine auf Böcken

# en: 42b1e336
hazard-lifted-machine-safe-2 = Räder verkeilt

# en: b87282fc
hazard-blades = Messer und Riemen

# en: 2ea033d0
hazard-blades-caution = Mähwerk aus, Schlüssel abgezogen und Kerzenstecker ab, bevor eine Hand an Mähwerk oder Riemen kommt.

# en: 235bafa2
hazard-blades-safe-1 = Mähwerk aus

# en: a018d5c5
hazard-blades-safe-2 = Schlüssel abgezogen

# en: 733ebbd3
hazard-gas-leak = Gas

# en: bb9e534a
hazard-gas-leak-caution = Gas aus der Flasche ist schwerer als Luft und explodiert. Nur im Freien, keine Flamme, keine Funken, nicht rauchen; riecht es nach Gas: Flasche zu und weggehen.

# en: bc722fdb
hazard-gas-leak-safe-1 = im Freien

# en: 148b2c5d
hazard-gas-leak-safe-2 = Flasche zu, bevor eine Verbindung geöffnet wird

# en: ac44db49
hazard-gas-leak-safe-3 = keine Flamme

## Alarme

# en: dc02782f
flag-fire-or-injury = Jemand ist verletzt, oder etwas brennt

# en: 0c576298
flag-fire-or-injury-say = Bringen Sie alle weg, und rufen Sie jetzt den Notruf an.

# en: 74d46370
flag-fuel-leak = Kraftstoffgeruch oder Pfütze

# en: 1571f14d
flag-fuel-leak-say = Den Schlüssel nicht drehen. Alle weg, keine Flamme, nicht rauchen. Den Kraftstoffhahn nur zudrehen, wenn Sie drankommen, ohne im Kraftstoff zu stehen. Wir rufen Sie an.

# en: c6b0306e
flag-smoke-or-hot-wires = Rauch, heiße Kabel oder glimmende Spreu

# en: 2cdeb03d
flag-smoke-or-hot-wires-say = Schlüssel abziehen. Batterietrennschalter aus, wenn die Maschine einen hat und Sie gefahrlos drankommen. Feuerlöscher bereithalten, und weg von der Batterie bleiben.

# en: 5c639cf4
flag-battery-damaged = Batterie aufgebläht, gerissen, undicht, zischt oder heiß

# en: ad48686d
flag-battery-damaged-say = Weg von der Batterie, keine Flamme, nicht laden, keine Starthilfekabel. Ein Monteur kommt.

# en: 2f95ff64
flag-battery-frozen = Batterie vielleicht gefroren

# en: a4fe12e8
flag-battery-frozen-say = Nicht laden und keine Starthilfe geben. Eine gefrorene Batterie kann platzen. Ein Monteur kommt.

# en: 3725e984
flag-battery-spark = Großer Funke beim Anklemmen der Batterie

# en: f87a21a7
flag-battery-spark-say = Kabel ab lassen und nicht noch einmal probieren. Schutzbrille auf, keine Flamme, weg von der Batterie. Etwas hat Kurzschluss; das misst erst ein Monteur.

# en: 2696195c
flag-lithium-cold = Lithium-Batterie unter null Grad

# en: 302fb678
flag-lithium-cold-say = Nicht laden und keine Starthilfe geben. Bringen Sie die Batterie erst ins Warme, und lassen Sie sie dort ein paar Stunden.

# en: a2f6235d
flag-leads-reversed = Kabel oder Batterie verpolt angeschlossen

# en: 85ae58d5
flag-leads-reversed-say = Lassen Sie alles aus. Nicht starten. Schreiben Sie auf, was wie angeschlossen war und wie lange.

# en: 89cdffe3
flag-wrong-fluid = Falsches in einem Tank

# en: 4ab39ea4
flag-wrong-fluid-say = Den Schlüssel nicht drehen, auch nicht auf EIN. Der Tank muss erst geleert werden.

# en: b7a56cdc
flag-water-in-engine = Maschine unter Wasser gestanden, oder Wasser im Motor

# en: 65733536
flag-water-in-engine-say = Nicht durchdrehen. Ein Motor voll Wasser bricht, wenn er gedreht wird.

# en: 91cf6287
flag-will-not-stop = Anlasser oder Motor hört nicht auf

# en: ac607d19
flag-will-not-stop-say = Schlüssel abziehen, Abstellzug ziehen, Kraftstoffhahn zu. Batterietrennschalter aus. Wenn keiner da ist: mit Handschuhen und Schutzbrille die Masseklemme abziehen, Gesicht abgewandt, nur wenn man ohne Riemen und Lüfter zu nahe zu kommen drankommt und nichts raucht oder zischt. Sonst Abstand halten und uns anrufen.

# en: e34b52b0
flag-interlock-bridged = Ein Sicherheitsschalter wurde überbrückt

# en: df273f8c
flag-interlock-bridged-say = So nicht starten. Sagen Sie uns, welcher Schalter; ein Monteur bringt das in Ordnung.

# en: e73b19ce
flag-raised-load = Etwas Angehobenes steht über jemandem

# en: 7571095f
flag-raised-load-say = Niemand geht darunter. Nur mit dem eigenen Hebel ablassen, wenn die Betriebsanleitung es erlaubt; sonst wegbleiben.

# en: 8d457086
flag-bad-place = Am Hang, auf der Straße oder am Bahnübergang

# en: 9dd20b90
flag-bad-place-say = Bremse anziehen, Räder verkeilen, alle weg von der Fahrbahnseite. Hier nicht an der Maschine arbeiten; den Verkehr warnen.

# en: c900dbc5
flag-ether-sprayed = Startspray wurde gesprüht

# en: 2bb56e85
flag-ether-sprayed-say = Nicht vorglühen und nicht noch einmal sprühen. Eine halbe Stunde mit offener Haube warten.

# en: 35762c86
flag-alone-and-far = Allein, und niemand weiß, wo

# en: 298cb6cb
flag-alone-and-far-say = Sagen Sie jemandem, wo Sie sind, bevor Sie mit den Händen etwas anfangen.

# en: fd6caa75
flag-nest-or-chaff = Nest oder trockene Spreu an Motor oder Auspuff

# en: fba56a5a
flag-nest-or-chaff-say = Nicht starten. Schlüssel abziehen, abkühlen lassen, dann Nest oder Spreu mit Handschuhen ausräumen. Nach angefressenen Kabeln sehen, und uns sagen, was Sie sehen.

# en: beaa4ca8
flag-somebody-too-near = Jemand unter, in oder dicht an der Maschine

# en: 247ac778
flag-somebody-too-near-say = Schlüssel abziehen und bei sich behalten. Nichts drehen und nichts probieren, bis alle so weit weg stehen, dass Sie sie sehen.

## Werkzeug

# en: f2810fae
tool-meter = Multimeter

# en: 36cb6b08
tool-test-lamp = Prüflampe

# en: 771885c7
tool-clamp-meter = Gleichstrom-Zange

# en: 58791177
tool-load-tester = Batterie-Belastungsprüfer

# en: 24157bdf
tool-hydrometer = Säureheber

# en: 5ab66c61
tool-charger = Ladegerät

# en: 5c8dae9e
tool-leads = Starthilfekabel

# en: d365337a
tool-jump-pack = Booster

# en: 36200cf9
tool-second-person = Ein Zweiter

# en: f17b42ed
tool-camera = Telefon mit Kamera

# en: ac6dd42c
tool-hand-tools = Schraubenschlüssel und Schraubenzieher

# en: c369fd67
tool-wire-brush = Drahtbürste und Polfett

# en: c0c325e9
tool-spark-tester = Zündfunkenprüfer

# en: 4c0ae5c7
tool-compression-gauge = Kompressionsprüfer

# en: cd37f80f
tool-clear-jar = Klares Glas

# en: 6200d44d
tool-fuel-gauge = Kraftstoff-Manometer

# en: 609e1e70
tool-wheel-chocks = Unterlegkeile

# en: dcc578ac
tool-torch = Taschenlampe

# en: 468c778d
tool-cleaning-spray = Reinigungsspray

# en: 72881750
tool-hand-pump = Umfüllpumpe und Kanister

# en: fdee8b32
tool-feeler-gauges = Fühlerlehren

# en: f38ff810
tool-leak-down-tester = Druckverlusttester und Druckluft

# en: 6e7ff113
tool-code-reader = Diagnosegerät des Herstellers

## Zugang

# en: 0a83e32a
access-battery-cover = Batteriedeckel auf oder Sitz hoch

# en: 264cba3c
access-bonnet = Haube auf

# en: 1c303faa
access-dash-panel = Armaturenbrett ab

# en: f734171c
access-under-machine = Von unten an den Anlasser

# en: c0cb5f57
access-starter-off = Anlasser ausgebaut

# en: 182b2760
access-starter-open = Anlasser zerlegt

# en: 8a369fa7
access-plug-out = Zündkerze heraus

# en: dcca38ba
access-fuel-line-open = Kraftstoffleitung offen

# en: 3e522349
access-carburettor-off = Vergaser ausgebaut

# en: b52425e5
access-injector-line-open = Einspritzleitung gelöst

# en: 9dc09ac8
access-flywheel-cover = Lüftergehäuse und Schwungraddeckel ab

# en: 3a565bc6
access-glow-plug-rail = Glühschiene gelöst

## Anlagen

# en: b05e7732
system-air-and-exhaust = Luftansaugung und Auspuff

# en: dfcb7c16
system-battery = Batterie

# en: dbd3bcb9
system-cables-and-earth = Dicke Kabel und Masse

# en: e364cccf
system-carburettor = Vergaser

# en: 22b69322
system-charging = Laden

# en: 3df7df9e
system-choke = Choke- und Gaszug

# en: 8404cd6a
system-clamps = Batterieklemmen

# en: 4a11415d
system-compression = Kompression und Ventile

# en: 6365aa46
system-control-positions = Hebel und Pedale nicht in Startstellung

# en: ab19acb1
system-decompressor = Dekompressor und Ventilspiel

# en: 55cbc7d6
system-diesel-cold = Diesel bei Frost

# en: e974c2e9
system-diesel-fuel = Dieselzulauf

# en: 73b4d890
system-electronics = Wegfahrsperre, Steuergerät, Harnstoff

# en: 7d00884b
system-engine-drag = Motor geht schwer

# en: 1c29b64c
system-engine-load = Was mit dem Motor mitdreht

# en: 86468ff9
system-flooding = Abgesoffen

# en: 7111f9a2
system-fuel-tank = Tank, Hahn und Belüftung

# en: 4e229d53
system-fuel-valve = Abschaltventil am Vergaser

# en: 23aca891
system-fuses = Sicherungen und Schmelzdrähte

# en: 733ebbd3
system-gas-fuel = Gas

# en: 7cd84b15
system-hand-back = Bevor die Maschine zurückgeht

# en: 8c485b07
system-ignition-points = Unterbrecher, Verteiler und Magnetzünder

# en: d2fb940c
system-ignition-stop = Abstellen und Versorgen der Zündung

# en: a3cb1e65
system-ignition-timing = Zündzeitpunkt

# en: ae1c3280
system-ignition = Zündung

# en: d30070c6
system-injection = Dieseleinspritzung

# en: 31e907e0
system-interlock-switches = Sicherheitsschalter

# en: 5f01b660
system-key-run = Zündschloss, Stellung EIN

# en: 27723f15
system-key-switch = Zündschloss

# en: 4bd208b9
system-petrol-fuel = Benzinzulauf

# en: 5cbeeb37
system-petrol-heat = Benzin und Hitze

# en: a21139f3
system-petrol-injection = Benzineinspritzung

# en: d652df81
system-preheat = Vorglühen

# en: b027ea27
system-recent-fuel-work = Nach Arbeiten an der Kraftstoffanlage

# en: 8b62048a
system-relay-and-solenoid = Startrelais, Magnetschalter, Schütz

# en: 2d634003
system-shut-downs = Ölwächter und Kippschalter

# en: e419c53a
system-standing-drain = Ruhestrom

# en: 4a0af6c2
system-start-wiring = Kabel im Startstromkreis

# en: 84b87089
system-starter-drive = Anlasserritzel und Zahnkranz

# en: 3863247f
system-starter-motor = Anlasser

# en: a60e1506
system-stop-control = Abstellung beim Diesel

# en: 017bfb87
system-two-batteries-and-isolator = Zwei Batterien, Trennschalter, Lithium

## Ausstattung

# en: 449d4383
feature-electric-start = Elektrischer Anlasser

# en: d283afbf
feature-recoil-start = Seilzugstarter

# en: 556b2051
feature-contactor = Schütz getrennt vom Anlasser

# en: f1d95962
feature-start-relay = Startrelais

# en: 53ea04d5
feature-seat-switch = Sitzschalter

# en: c43ef872
feature-clutch-switch = Kupplungsschalter

# en: 8781541a
feature-brake-switch = Bremsschalter

# en: b9f0476f
feature-neutral-switch = Leerlaufschalter

# en: 803ab9f1
feature-pto-switch = Schalter für Zapfwelle oder Mähwerk

# en: 6cf749fa
feature-pto = Antrieb für Zapfwelle oder Mähwerk

# en: 9c6cd0d2
feature-lever-bar = Sicherheits- oder Haltebügel

# en: 4bb64660
feature-isolator = Batterietrennschalter

# en: 0cd08b1e
feature-emergency-stop = Not-Aus-Knopf

# en: 8a933ea3
feature-two-batteries = Zwei Batterien

# en: ba471c6c
feature-lights = Licht oder Kontrolllampen

# en: 322babc7
feature-display = Anzeige mit Codes oder Volt

# en: 848c6c07
feature-charging = Lichtmaschine oder Ladespule

# en: 3950d83d
feature-fan-belt = Lichtmaschine mit Riemenantrieb

# en: 5c4bb842
feature-immobiliser = Wegfahrsperre oder PIN-Sperre

# en: 6de13ebc
feature-controller = Elektronisches Motorsteuergerät

# en: 7a8c54cf
feature-exhaust-fluid = Harnstoffanlage

# en: aa34bc76
feature-tilt-stop = Kippabschaltung

# en: e364cccf
feature-carburettor = Vergaser

# en: 66796116
feature-choke = Choke

# en: 3e2ffd59
feature-fuel-tap = Kraftstoffhahn

# en: a5a67886
feature-fuel-solenoid = Kraftstoff-Abschaltventil am Vergaser

# en: f2f0dd02
feature-fuel-pump = Kraftstoffpumpe

# en: 1cc8f3ab
feature-magneto-ignition = Magnetzündung

# en: d428b0f7
feature-points = Unterbrecherkontakte

# en: c6599450
feature-glow-plugs = Glühkerzen oder Ansaugvorwärmung

# en: c63769d1
feature-stop-solenoid = Elektrischer Abstellmagnet

# en: 8fdb703f
feature-stop-knob = Abstellzug zum Ziehen

# en: 22f2a4f8
feature-decompressor = Automatischer Dekompressor

# en: 712d6509
feature-low-oil-stop = Ölmangelabschaltung

# en: e55d3640
feature-hydrostatic = Hydrostat

# en: fac175fa
feature-electric-fuel-pump = Elektrische Kraftstoffpumpe

# en: 30634f30
feature-electronic-injection = Elektronische Einspritzung (Common Rail oder Benzin)

# en: d8e73763
feature-hand-primer = Handpumpe an Dieselfilter oder Pumpe

# en: 44ff34a1
feature-fuel-bowl = Schauglas unter dem Kraftstofffilter

# en: 0d31059d
feature-coil-ignition = Zündspule mit Batteriestrom

# en: 08e37599
feature-engine-switch = Stoppschalter am Motor oder Holm

## Dringlichkeit

# en: d38e778d
rule-said-urgent = Der Anrufer sagt, es kann nicht warten.

# en: 6b46dd19
rule-said-no-hurry = Der Anrufer sagt, es eilt nicht.

# en: c0f5d51f
rule-in-danger = Die Maschine ist dort, wo sie steht, eine Gefahr.

# en: f8dff70a
rule-alone = Jemand ist allein damit.

# en: cd488950
rule-grain-harvest = Ein Mähdrescher steht in der Ernte still.

# en: b859d02f
rule-forage-harvest = Eine Erntemaschine steht in ihrer Saison still.

# en: c4146695
rule-spraying = Tage zum Spritzen sind selten.

# en: a8b21b40
rule-field-work = Es ist die Zeit der Feldarbeit.

# en: ceac31e7
rule-feeding = Ein Lader füttert oft jeden Tag Tiere.

# en: 3b49c7fb
rule-winter-feeding = Im Winter stehen die Tiere im Stall und werden mit der Maschine gefüttert.

# en: b40d42ec
rule-pump-or-power = Wasser oder Strom kann davon abhängen.

# en: d557f2c8
rule-collector = Ein alter Traktor ist selten der einzige.

# en: 6cb3b0e1
rule-came-back = Derselbe Schaden kam nach unserer Arbeit wieder.

# en: 2a581b23
rule-half-a-day = Der Anrufer wartet seit einem halben Tag.

# en: 3c973c3f
rule-a-day = Der Anrufer wartet seit einem Tag oder länger.

## Maschinen

# en: b1fb254d
machine-atv = Quad oder Nutzfahrzeug

# en: ebdad9ba
machine-others-family = Andere

# en: 31359b08
machine-backhoe-loader = Baggerlader oder Bagger

# en: 1c3d5bbe
machine-loaders-family = Lader

# en: 35843e7a
machine-combine = Mähdrescher

# en: c91ab8b6
machine-harvest-family = Ernte

# en: 0aaeabf4
machine-compact-tractor = Kleintraktor

# en: c5fe20e6
machine-tractors-family = Traktoren

# en: 6b1cb2bd
machine-garden-tractor = Gartentraktor

# en: ae9b6a49
machine-mowers-family = Mäher

# en: 1e2b9cce
machine-harvester = Andere Erntemaschine

# en: af98f1f9
machine-old-tractor = Alter Traktor oder Oldtimer

# en: e4873b72
machine-other = Andere Maschine

# en: a156b9d0
machine-pump-or-generator = Pumpe oder Stromerzeuger

# en: 288716f1
machine-ride-on-mower = Aufsitzmäher

# en: 82f18357
machine-row-crop-tractor = Großer Traktor

# en: 6ab3d0b3
machine-skid-steer = Kompakt- oder Raupenlader

# en: 67c9b3a3
machine-sprayer = Selbstfahrende Spritze

# en: 4bc03b43
machine-telehandler = Teleskoplader

# en: f46aa8c6
machine-utility-tractor = Traktor bis etwa 120 PS

# en: 0f69172e
machine-walk-behind = Handgeführte Maschine

# en: 6ac9c756
machine-zero-turn = Zero-Turn-Mäher

# en: 5a281bf1
observation-made-it-go = Wodurch es doch noch ging

# en: c3636fc1
state-made-it-go-key-wiggled = Am Schlüssel gewackelt

# en: 8e029b23
state-made-it-go-control-worked = Hebel, Pedal oder Sitz bewegt

# en: 3c42b2de
state-made-it-go-leads-moved = Batteriekabel oder Klemme bewegt

# en: 9bb8ee07
state-made-it-go-wires-moved = Sicherung, Stecker oder Kabel bewegt

# en: 499dfa06
state-made-it-go-starter-knocked = Ein Schlag beim Anlasser

# en: d9056b44
state-made-it-go-engine-turned = Motor ein Stück gedreht

# en: 767f7091
state-made-it-go-many-tries = Schlüssel viele Male gedreht

# en: 099b6f64
state-made-it-go-rested = Eine Weile stehen gelassen

# en: af2e80ff
state-made-it-go-primer-pumped = Mit der Handpumpe gepumpt

# en: 5a281bf1
check-ask-made-it-go = Wodurch es doch noch ging

# en: d823a36e
check-ask-made-it-go-ask = Hat es durch irgendetwas doch noch funktioniert, diesmal oder früher?

# en: b4dd980c
check-ask-made-it-go-how = Sagen Sie nur, was schon gemacht wurde. Bitte nichts Neues ausprobieren.

# en: 9f868ab2
state-recent-work-lever-work = Sitz, Pedale oder Schalthebel

# en: b84c6bc2
observation-plus-side-drop-volts = Volt vom Pluspol zum Bolzen des Magnetschalters, START

# en: 37a52a73
state-plus-side-drop-volts-good = Unter 0,4 V

# en: 18d09ec8
state-plus-side-drop-volts-look-into = 0,4 bis 0,8 V

# en: aa8edfd3
state-plus-side-drop-volts-bad = Über 0,8 V

# en: 188cd1e0
check-read-plus-side = Plusseite beim Starten

# en: dec86994
check-read-plus-side-ask = Wie viele Volt vom Pluspol zum Batteriebolzen des Magnetschalters, Schlüssel auf START?

# en: ca7626a6
check-read-plus-side-how = Rot auf den Bleipol, Schwarz auf den Bolzen selbst. Dann Stelle für Stelle - Klemme, Verbindung, Trennschalter, Kabel, Mutter - wo die Volt verloren gehen.

# en: d2e6fad4
verdict-read-plus-side-sound = Plusseite in Ordnung.

# en: 7f06eb8b
verdict-read-plus-side-between = Hier gehen die Quellen auseinander, 0,4 bis etwa 0,8 V: Klemme und Kabel einzeln messen.

# en: ec95003f
verdict-read-plus-side-faulty = Plusseite schlecht: Klemme, Trennschalter, Kabel oder die Mutter am Bolzen.

# en: 668fa3da
verdict-read-charging-cold-now = Richtig bei dieser Kälte: etwa 0,1 V mehr je 10 Grad.

# en: e68dc44e
verdict-read-charging-warm-now = Ohne Frost zu viel: Regler oder seine Masse.

# en: 9e2b84f1
verdict-ask-oil-grade-fits-hard-frost = 0W lässt bis -35, 5W bis -30 Grad durchdrehen: Das Öl ist bei dieser Kälte nicht der Grund.

# en: 564951ef
verdict-ask-oil-grade-limit-in-frost = 10W lässt bis -25, 15W bis -20 Grad durchdrehen: Bei so starkem Frost kann es zu dick sein.

# en: 124309dd
verdict-ask-oil-grade-fits-light-frost = 10W lässt bis -25, 15W bis -20 Grad durchdrehen: Bei diesem Frost ist es nicht zu dick.

# en: cbf6ed91
verdict-ask-oil-grade-no-matter = Ohne Frost ist keine Sorte zum Durchdrehen zu dick.

# en: 6bf98336
verdict-ask-fuel-grade-waxes-surely = Sommerdiesel lässt sich zwischen +5 und -10 Grad nicht mehr filtern: Bei diesem Frost ist er versulzt.

# en: aa851ff5
verdict-ask-fuel-grade-edge = Winterdiesel lässt sich bis -15 oder -20 Grad filtern: Bei so starkem Frost trotzdem nach Paraffin sehen.

# en: d38178a7
verdict-ask-fuel-grade-no-matter = Über +5 Grad fließt jede Sorte.

# en: 54451818
verdict-read-load-volts-worn-when-warm = Unter 9,6 V ab 20 Grad: verbraucht, wenn sie geladen war; sonst laden und neu prüfen. Bei 6 oder 24 V die Hälfte oder das Doppelte.

# en: a27470c5
verdict-read-amps-low-but-slow = Wenig Strom und langsam: Widerstand. Den Spannungsverlust an jeder Verbindung und jedem Kabel messen.

# en: a87d005c
verdict-read-amps-low-and-still = Wenig Strom, und er steht: verbrannte Kontakte, verbrauchte Kohlen oder eine schlechte Verbindung.

# en: d0abbb7d
verdict-read-amps-low-and-turning = Wenig Strom bei gutem Tempo: kleiner Motor, Startstromkreis in Ordnung. Schwache Kompression sähe auch so aus.

# en: 1b607763
verdict-read-amps-low-and-alone = Wenig Strom, der Anlasser dreht allein: Sein Ritzel greift nicht.

# en: 70cd1853
verdict-read-amps-usual-but-slow = Üblicher Strom, aber langsam: schwache Batterie, kaltes Öl oder eine beginnende schlechte Verbindung. Batteriespannung messen.

# en: d6393742
verdict-read-amps-usual-and-still = Strom fließt, und er steht: schwache Batterie oder ein Motor, der hält. Erst Batteriespannung, dann mit der Stange drehen.

# en: 05ac1b7f
verdict-read-amps-usual-and-turning = Strom und Tempo wie üblich: Der Startstromkreis ist in Ordnung. Nach Kraftstoff, Funke und Luft sehen.

# en: 901be34b
verdict-read-amps-high-and-slow = Viel Strom und langsam: dickes Öl, schwergängiger Motor oder ein Anlasser, der reibt oder Schluss hat.

# en: a625153b
verdict-read-amps-high-and-still = Viel Strom, und er steht: Motor blockiert oder Anlasser klemmt. Aufhören, mit der Stange drehen, an Flüssigkeit im Zylinder denken.

# en: 2d692f10
verdict-read-amps-high-and-turning = Viel Strom bei gutem Tempo: großer Motor, oder die Zange hat einen anderen Verbraucher mitgemessen.

# en: c53c343b
act-jump-start-not-other-volts = Hier nicht überbrücken: Es ist keine 12-Volt-Maschine. Die Werkstatt bringt das Passende mit.

# en: be43fb30
act-jump-start-not-plus-on-frame = Hier nicht überbrücken: Der Pluspol liegt am Rahmen, wie üblich angelegte Kabel gäben einen Kurzschluss. Das macht die Werkstatt.

# en: 0a42996c
act-jump-start-not-electronics = Hier nicht überbrücken: Es kann eine Maschine voller Elektronik beschädigen. Die Werkstatt macht es nach der Anleitung.

# en: 2cb2da93
act-jump-start-not-lithium = Hier nicht überbrücken: Es ist eine Lithiumbatterie.

# en: e2c726d1
act-jump-start-not-hard-frost = Bei starkem Frost nicht überbrücken: Eine leere Batterie kann gefroren sein und platzen. Erst wird sie angesehen.

# en: 6115c1ab
act-charge-battery-not-lithium = Nicht mit einem Ladegerät für Bleibatterien laden: Eine Lithiumbatterie braucht ihr eigenes.

# en: 4a73bf8a
act-charge-battery-not-hard-frost = Bei starkem Frost nicht laden: Eine leere Batterie kann gefroren sein und platzen. Erst wird sie angesehen.

# en: b1f30731
feature-positive-earth = Pluspol am Rahmen

## Schaltbild

# en: f3d1701e
circuit-battery = Batterie

# en: f7994fcd
circuit-plus-clamp = Plusklemme

# en: db62a978
circuit-plus-cable = Pluskabel

# en: 42de5ac5
circuit-live-cable = Kabel zum Anlasser

# en: 79fa068f
circuit-minus-clamp = Minusklemme

# en: 34ddaaa6
circuit-earth-strap = Masseband

# en: 1d768c14
circuit-small-earth = kleine Masse

# en: 04e2face
circuit-feed-wire = Zuleitung

# en: 6950e118
circuit-main-fuse = Haupt- sicherung

# en: 707c2e01
circuit-key-wire = Leitung zum Zündschloss

# en: e3bcb449
circuit-key-supply = Zündschloss Eingang

# en: 7996447b
circuit-key-on = Zündschloss EIN

# en: d9605aeb
circuit-key-start = Zündschloss START

# en: dfe0b81f
circuit-lamps = Lampen

# en: fb137b42
circuit-contactor-coil = Spule im Schütz

# en: a9b40a34
circuit-contactor = Anlasser- schütz

# en: d80b4fea
circuit-starter-cable = Anlasserkabel

# en: 4ff99612
circuit-starter = Anlasser

# en: 9b2abfc2
circuit-wire = Leitung

# en: 6be95fb5
circuit-brake-switch = Bremsschalter

# en: 68e8bc12
circuit-start-wire = Leitung START

# en: e133ac17
circuit-relay-coil = Spule im Startrelais

# en: 83cf6a4d
circuit-start-relay = Startrelais

# en: 41fca1f4
circuit-solenoid-wire = Leitung zum Magnetschalter

# en: 707d808d
circuit-pull-in-winding = Einzugs- wicklung

# en: 39d058b8
circuit-hold-in-winding = Halte- wicklung

# en: ea484158
circuit-solenoid-contact = Kontakt im Magnetschalter

# en: 145fd423
circuit-isolator = Batterie- trennschalter

# en: adb6ff12
circuit-neutral-switch = Leerlauf- schalter

# en: 26861a35
circuit-second-battery = zweite Batterie

# en: 2478d627
circuit-series-link = Reihenbrücke

# en: b6234fb8
circuit-plus-link = Brücke plus

# en: b99f6d36
circuit-minus-link = Brücke minus

# en: 377c6838
circuit-clutch-switch = Kupplungs- schalter

# en: d0767e8e
circuit-pto-switch = Zapfwellen- schalter

# en: 05eba9a5
circuit-seat-switch = Sitzschalter

# en: 9ce552ab
act-extra-earth-lead = Ein zweites Massekabel

# en: f6acf7cb
act-extra-earth-lead-ask = Schlüssel aus, ein gutes Überbrückungskabel vom Masse-Pol der Batterie an blankes Metall am Motorblock. Dann vom Sitz aus starten. Was passiert?

# en: c378364d
act-extra-earth-lead-how = Erst an den Block klemmen, zuletzt an den Pol; weg von Kraftstoffleitungen und allem, was sich dreht. Nach dem Versuch wieder ab: Es findet eine schlechte Masse, es behebt sie nicht.

# en: 580d37ff
observation-started-by = Womit gestartet wird

# en: 56eb7bba
state-started-by-key = Mit Schlüssel oder Knopf

# en: 5536571d
state-started-by-cord = Mit dem Seilzug

# en: e15e4388
state-started-by-both = Geht beides

# en: 580d37ff
check-how-started = Womit gestartet wird

# en: 0f6be188
check-how-started-ask = Womit starten Sie die Maschine?

# en: f2bf2916
check-hear-pull = Was am Seilzug passiert

# en: d895d1a1
check-hear-pull-ask = Was genau passiert, wenn Sie am Seil ziehen?

# en: 03c1084d
check-hear-pull-how = Sagen Sie nur, was Sie beim letzten Mal gesehen und gehört haben; nicht noch einmal probieren.

# en: a73a0d17
menu-hear-pull-does-not-turn = Das Seil bewegt sich nicht

# en: 2e17f64c
menu-hear-pull-turns-badly = Es zieht sich schwer oder ruckelt

# en: f2c4c70b
menu-hear-pull-turns-nothing = Das Seil dreht nichts mit

# en: f9889039
menu-hear-pull-turns-well = Es zieht sich wie immer

# en: 61b4e70c
check-hear-try = Was beim Startversuch passiert

# en: 08532a96
check-hear-try-ask = Was genau passiert, wenn Sie zu starten versuchen?

# en: 03c1084d
check-hear-try-how = Sagen Sie nur, was Sie beim letzten Mal gesehen und gehört haben; nicht noch einmal probieren.

# en: 46f07eb9
menu-hear-try-does-not-turn = Der Motor dreht nicht

# en: 0be75f28
menu-hear-try-turns-badly = Er dreht schlecht

# en: 6474c6df
menu-hear-try-turns-well = Er dreht gut

# en: 2ed665c4
menu-hear-try-will-not-stop = Der Anlasser hört nicht auf

# en: 61621f68
feature-cord-alone = Seilzug ohne Batterie
