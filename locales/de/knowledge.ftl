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
fault-exhaust-fluid-lock = Gesperrt wegen AdBlue oder Partikelfilter

# en: ec980119
fault-exhaust-fluid-lock-explain = Das Steuergerät verbietet den Start: AdBlue fehlt, ist schlecht, oder die Anlage dafür hat einen Fehler.

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
fault-wrong-fuel-explain = Diesel im Benzin, Benzin im Diesel, Wasser oder AdBlue im Tank. Der Motor darf nicht durchgedreht werden.

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

# en: cf63ade0
state-charging-volts-high = Über 15 V

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
observation-lit-key-out = Leuchtet oder summt etwas bei abgezogenem Schlüssel?

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
state-display-says-fluid-sign = AdBlue- oder Filterwarnung

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
observation-fuel-reaches-engine = Kommt Kraftstoff am Motor an?

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
observation-prime-fires = Zündet mit ein paar Tropfen frischem Benzin?

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

# en: dc937b59
state-flooding-signs-none = Keiner

# en: dfcb7c16
state-recent-work-battery-work = Batterie

# en: e364cccf
state-recent-work-carburettor-work = Vergaser

# en: 1ea442a1
state-battery-goes-flat-no = Nein

# en: 67e1bca0
state-injector-line-fuel-none = Nichts

# en: 63980060
state-return-bubbles-none = Keine Blasen

# en: dc937b59
state-smoke-none = Keiner

# en: c08ebd57
state-click-sound-none = Kein Klacken

# en: 41f9d57c
state-controls-moved-no-change = Keine Änderung

# en: b45adc23
state-controls-moved-then-started = Dann sprang sie an

# en: 3376bd93
state-jump-start-not-tried = Nicht probiert

# en: 41f9d57c
state-jump-start-no-change = Keine Änderung

# en: 1ea442a1
state-at-machine-no = Nein

# en: d5a98cdb
state-neutral-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-neutral-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-neutral-switch-out-volts-good = Über 8 V

# en: d5a98cdb
state-pto-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-pto-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-pto-switch-out-volts-good = Über 8 V

# en: d5a98cdb
state-seat-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-seat-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-seat-switch-out-volts-good = Über 8 V

# en: d5a98cdb
state-clutch-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-clutch-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-clutch-switch-out-volts-good = Über 8 V

# en: d5a98cdb
state-brake-switch-out-volts-none = Unter 1 V

# en: 71bfd148
state-brake-switch-out-volts-weak = 1 bis 8 V

# en: e696f5f4
state-brake-switch-out-volts-good = Über 8 V

# en: e5167a79
state-stud-start-volts-none = Unter 2 V

# en: d5a98cdb
state-trigger-start-volts-none = Unter 1 V

# en: 71bfd148
state-trigger-start-volts-weak = 1 bis 8 V

# en: e696f5f4
state-trigger-start-volts-good = Über 8 V

# en: d5a98cdb
state-starter-start-volts-none = Unter 1 V

# en: 8b5ed47f
state-starter-start-volts-good = Über 9 V

# en: caf12bf7
state-ground-drop-volts-good = Unter 0,2 V

# en: e696f5f4
state-ground-drop-volts-open = Über 8 V

# en: 1d273080
state-minus-clamp-drop-volts-good = Unter 0,1 V

# en: 3769b130
state-minus-clamp-drop-volts-bad = Über 0,3 V

# en: 1d273080
state-plus-clamp-drop-volts-good = Unter 0,1 V

# en: 3769b130
state-plus-clamp-drop-volts-bad = Über 0,3 V

## Prüfungen

# en: 263f1922
check-look-at-alternator-belt = Keilriemen der Lichtmaschine

# en: 0cd08b1e
check-look-at-stop-button = Not-Aus-Knopf

# en: ce795f35
check-look-at-bar = Sicherheitsbügel oder Haltebügel

# en: c34e444c
check-look-for-bubbles = Luft im Diesel

# en: 04f7ac15
check-ask-oil-grade = Sorte des Motoröls

# en: 66a1329c
check-look-at-belts = Riemen und Riemenscheiben

# en: 3e2ffd59
check-look-at-tap = Kraftstoffhahn

# en: 7e421c38
check-ask-fuse-again = Was eine neue Sicherung machte

# en: 6ad02267
check-ask-gas-bottle = Noch Gas da

# en: 26302a33
check-look-at-gas-frost = Eis am Regler

# en: 25a58883
check-hand-back-why-flat = Warum die Batterie leer war

# en: d428b0f7
check-see-points = Unterbrecherkontakte

# en: 33a7c8d3
check-see-distributor = Verteilerkappe und Verteilerfinger

# en: 46f383b6
check-ask-engine-switch = Schalter am Motor selbst

# en: 586a4420
check-see-lead-order = Reihenfolge der Kerzenkabel

# en: 1b8559d9
check-spark-with-new-plug = Funke mit neuer Kerze

# en: be2c56a5
check-look-at-switch-plugs = Sicherheitsschalter, ihre Stecker und Kabel

# en: 76650bf4
check-ask-key-spring = Schlüssel auf START losgelassen

# en: 2410d42a
check-see-preheat-lamp = Vorglühlampe

# en: a081828d
check-ask-preheat-time = Wie lange vorgeglüht wurde

# en: 4f283d62
check-read-glow = Strom der Glühkerzen

# en: f52be2dc
check-read-glow-amps = Strom je Glühkerze

# en: 3f3f9abb
check-see-hoses = Verlauf der Kraftstoffschläuche

# en: 62e0d0c8
check-see-level = Wie die Maschine steht

# en: ede6387f
check-look-at-wires = Aussehen der Kabel

# en: 95afdc99
check-see-teeth = Zähne von Ritzel und Zahnkranz

# en: 382a6873
check-see-brushes = Kohlen und Kollektor

# en: 9524546e
check-look-at-stop-knob = Abstellzug

# en: 416d07d2
check-read-compression-lowest = Niedrigste Kompression eines kleinen Diesels

# en: a8825915
check-see-timing-marks = Steuermarken

# en: 9bdce74c
check-hear-cranking = Klang beim Durchdrehen

# en: 278b1b2a
check-read-compression = Kompression

# en: 38759dac
check-read-valve-gap = Ventilspiel

# en: c033fc93
check-see-display = Was die Anzeige sagt

# en: c4b17b22
menu-see-display-as-always = Wie immer

# en: 5a2bc8b6
menu-see-display-dark = Dunkel oder leer

# en: 71939925
check-ask-fuel-given = Was zuletzt getankt wurde

# en: 61cc1533
check-ask-fuel-grade = Sorte des Diesels

# en: b8d7d458
check-ask-fuel-age = Alter des Kraftstoffs

# en: 38cbdcaf
check-smell-fuel = Geruch und Farbe des Benzins

## Teile

# en: 4bb64660
part-isolator = Batterietrennschalter

# en: 27723f15
part-key-switch = Zündschloss

# en: f1d95962
part-start-relay = Startrelais

# en: 20032501
part-solenoid = Magnetschalter

# en: 3863247f
part-starter = Anlasser

# en: d54fa6c7
part-spark-plug = Zündkerze

# en: a947d9f2
part-ignition-coil = Zündspule oder Zündmodul

# en: e364cccf
part-carburettor = Vergaser

# en: f2f0dd02
part-fuel-pump = Kraftstoffpumpe

# en: 33a7c8d3
part-distributor-parts = Verteilerkappe und Verteilerfinger

## Anlagen

# en: dfcb7c16
system-battery = Batterie

# en: e364cccf
system-carburettor = Vergaser

# en: 27723f15
system-key-switch = Zündschloss

# en: 3863247f
system-starter-motor = Anlasser

## Ausstattung

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

# en: 4bb64660
feature-isolator = Batterietrennschalter

# en: 0cd08b1e
feature-emergency-stop = Not-Aus-Knopf

# en: e364cccf
feature-carburettor = Vergaser

# en: 3e2ffd59
feature-fuel-tap = Kraftstoffhahn

# en: f2f0dd02
feature-fuel-pump = Kraftstoffpumpe

# en: d428b0f7
feature-points = Unterbrecherkontakte
