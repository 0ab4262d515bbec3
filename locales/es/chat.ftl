# reviewed: not yet

### Lo que dice el bot. Las palabras de las máquinas, averías y pruebas están en knowledge.ftl.
### Trato de usted. Frases cortas y palabras de todos los días: se lee de pie, junto a una máquina parada.

## The first minute

# en: b63d1fd5
hello = Hola, aquí { $shop }. Le hago unas pocas preguntas cortas sobre su máquina. Así sabemos qué puede tener antes de que salga nadie.
# en: 3885c556
consent = Lo que escriba y mande se guarda para esta reparación. Escriba «olvidar» si quiere que se borre.
# en: 560cc3a0
consent-link = Lo que escriba y mande se guarda para esta reparación: { $link }
# en: 477a0bc3
noted = Apuntado: { $what }.
# en: 7e705f43
named-value = { $name }: { $value }
# en: 08868587
named-answer = { $what }
# en: 822b5377
ask-safety = Lo primero: ¿están todos fuera de peligro?
# en: a30d6f78
ask-safety-how = ¿Hay alguien herido? ¿Ve fuego o humo, huele a combustible, o hay una batería hinchada o que silba?
# en: 157cfa1b
answer-all-clear = No hay ningún peligro
# en: b17a2a1a
safety-unsure = Entonces mire desde donde está antes de tocar nada. Si ve, huele u oye algo de eso, no se acerque y escríbalo enseguida.
# en: fcc20d7e
ask-kind = ¿Qué máquina es?
# en: ab8e9222
known-again = ¿Otra vez esta: { $machine }?
# en: 6bf97e46
known-again-fuel = ¿Otra vez esta: { $machine }, { $fuel }?
# en: 9c8b4841
answer-another-machine = Otra máquina
# en: a498407a
ask-fuel = ¿Con qué funciona?
# en: 3cb6c628
fuel-petrol = Gasolina
# en: 9a98afc6
fuel-diesel = Diésel (gasoil)
# en: e1765dd7
fuel-gas = Gas
# en: e2ee57ed
fuel-unknown = combustible desconocido

## Questions and answers

# en: e1008e96
answer-dont-know = No lo sé
# en: a30a382a
answer-none-of-these = Nada de eso
# en: a68c7f39
answer-other = Otra cosa
# en: 21993e86
answer-nothing-more = Nada más
# en: 46cc947c
answer-skip = Saltar esto
# en: 3e44596f
answer-done = Hecho
# en: ef86adc0
answer-cannot = No puedo hacerlo
# en: d533b110
answer-show = Enséñemelo
# en: b3674ada
answer-more = Más …
# en: 88b58c26
answer-noted = apuntado
# en: 9e500d8c
answer-photo-got = foto recibida
# en: e10631fb
answered = Su respuesta: { $answer }
# en: cea5214e
about-more =
    { $count ->
        [one] Queda más o menos una pregunta.
       *[other] Quedan unas { $count } preguntas.
    }
# en: 69575856
about-more-rises =
    { $count ->
        [one] Esa respuesta abre otro camino, así que queda más o menos una pregunta.
       *[other] Esa respuesta abre otro camino, así que quedan unas { $count } preguntas.
    }
# en: f356c1d9
type-a-reading = Escriba lo que marca, por ejemplo 12,4 { $unit }.
# en: 7f2a93fd
not-understood = Eso no lo he entendido. Queda guardado para el mecánico. Pulse una respuesta, por favor, o dígalo con otras palabras.
# en: ff4966eb
passed-unclear = Eso tampoco lo he entendido. Sigo sin respuesta y guardo sus palabras para el mecánico.
# en: 7d418b5d
choose-one = Pulse una de las respuestas de abajo, por favor, o escríbala.
# en: 4100c587
step-is-closed = Esa pregunta ya está cerrada. Esta es la que sigue abierta.
# en: f6ffcdb0
here-we-are = Vamos por aquí:
# en: 13c95674
asked-again = Esa la repetimos.
# en: c11f51ea
taken-back = Lo he quitado.
# en: 09fee779
nothing-before = Antes de esto no hay nada.
# en: 858811e3
nothing-to-change = Ahí no hay nada que cambiar.
# en: 681f32a3
no-answers-yet = Todavía no ha contestado nada.
# en: 88dab10b
which-answer = ¿Qué respuesta quiere cambiar?
# en: 0d6d847b
answer-in-list = { $name }: { $value }
# en: db7d689a
ask-meaning = ¿Qué quiere decir con eso?
# en: b9fd7f11
implausible = { $value } no puede ser aquí: espero entre { $low } y { $high } { $unit }. Vuelva a mirarlo, por favor, y dígame dónde lo ha medido.
# en: e5e8fb1c
reading-unexplained = { $what }, { $value }: eso no cuadra con las otras medidas. Nada de lo que conozco da todas a la vez. ¿Dónde tenía las puntas? Mida otra vez si puede, por favor, y escriba lo que marque.
# en: 823c3d54
reading-probes = ¿En qué parte de la batería puso las puntas?
# en: fb93e145
press-probes-post = En los bornes
# en: 1dd13d36
press-probes-clamp = En los terminales
# en: ad8cea8b
press-probes-unknown = No estoy seguro
# en: c7fc33c3
probes-noted = Apuntado dónde midió.
# en: 582a6358
edited-kept = He guardado el mensaje cambiado para el taller. Para cambiar una respuesta, escríbala otra vez o pulse «Más».
# en: 4117cd66
cannot-use-that = Esa clase de mensaje no la puedo leer. Use palabras, un botón o una foto, por favor.
# en: d754f315
unknown-command = Ese comando no lo conozco. Escriba sin más lo que pasa, o escriba «ayuda».

## Trying things

# en: 6be6f5ea
try-again-now = Ahora pruebe a arrancar una vez, desde el asiento. ¿Qué hace?
# en: e076f417
try-safely = Al aire libre. Siéntese en el asiento. Freno echado, punto muerto, cuchillas o toma de fuerza desconectadas, nadie cerca. Gire la llave, cuente hasta diez y suelte.
# en: 03b1983c
try-as-before = Como antes: desde el asiento, freno echado, punto muerto, toma de fuerza desconectada, nadie cerca. Cuente hasta diez y suelte.
# en: 13239ce1
starter-rests = El motor de arranque tiene que enfriarse dos minutos. No pruebe antes de las { $time }.
# en: 3a69fa83
outcome-cured = Arranca y sigue en marcha
# en: c5e9b2d1
outcome-no-change = Sigue igual
# en: f6601074
outcome-changed = Ahora hace otra cosa

## Photos, place, phone

# en: 354616d5
ask-photo = Mande una foto, por favor: la batería con las dos puntas de los cables, de cerca.
# en: 1dc91935
ask-photo-battery = Mande una foto, por favor: la batería con las dos puntas de los cables, de cerca.
# en: b32b6a88
ask-photo-fuse = Mande una foto, por favor: los fusibles con la tapa quitada, de cerca.
# en: f398fb26
ask-photo-starter = Mande una foto, por favor: el motor de arranque con sus cables, de cerca. Motor parado, llave quitada.
# en: b444aee6
ask-photo-fuel = Mande una foto, por favor: el filtro de combustible o el vaso de cristal, de cerca. No abra nada.
# en: 9a96ba43
ask-photo-plug = Mande una foto, por favor: la bujía y su cable, tal como están ahora. No saque nada.
# en: 395d1fab
ask-photo-controls = Mande una foto, por favor: las palancas, los pedales y la llave, tal como están ahora.
# en: 35043a6f
ask-plate = Una foto de la placa con el modelo y el número de serie nos ayudaría a llevar las piezas buenas. Mándela aquí, o escriba el número.
# en: 15b93725
file-kept =
    { $count ->
        [one] Gracias, lo he guardado para el taller.
       *[other] Gracias, he guardado { $count } fotos y archivos para el taller.
    }
# en: 44aebe5b
photo-dark = Esa foto está muy oscura y se ve poco.
# en: c6f5c016
photo-blurred = Esa foto ha salido movida.
# en: 16098c85
photo-tiny = Esa foto es muy pequeña.
# en: 6a17f3f4
photo-if-you-can = Si puede, haga otra: de cerca, sin moverse, con la luz a la espalda. Si no, sigamos. La he guardado.
# en: 8e904f5f
ask-story = ¿Qué pasó justo antes? ¿Qué trabajo se le hizo, qué ha probado y qué encontró?
# en: a217f2a0
ask-story-how = Escríbalo con sus palabras o mande un mensaje de voz. También le llega al taller.
# en: 9a87f346
ask-urgency = ¿Qué prisa corre?
# en: 82e8c323
urgency-high = Mucha: esperan animales, cosecha o carretera
# en: 8c515595
urgency-normal = En los próximos días
# en: 01e96389
urgency-low = Puede esperar
# en: ea7a8b4a
ask-where = ¿Dónde está la máquina? Mande la ubicación o escríbalo: finca, campo, entrada.
# en: 20da302d
ask-where-phone = ¿Dónde está la máquina y a qué número podemos llamarle? Pulse abajo o escríbalo: finca, parcela, entrada, número.
# en: 602b790e
share-place = Mandar mi ubicación
# en: fed99a6f
place-noted = Ya tengo el sitio.
# en: 5bff8134
ask-phone = ¿A qué número le podemos llamar?
# en: c5a414f4
share-phone = Mandar mi número
# en: ad213b1e
phone-noted = Ya tengo su número.
# en: ec5e8e02
contact-not-own = Ese contacto es de otra persona. Mande el suyo, por favor, o escriba el número.
# en: 8c7bf85a
ask-equipment = ¿Qué tiene a mano? Marque todo lo que tenga.
# en: 7167d2d6
equipment-meter = Un voltímetro o tester
# en: f9c514ae
equipment-leads = Pinzas de arranque y una batería buena
# en: d8206c8f
equipment-charger = Un cargador
# en: 2f0911de
equipment-second-person = Alguien que ayude
# en: 21954101
equipment-hand-tools = Llaves o carraca
# en: 23fb22e2
equipment-ticked = ✓ { $thing }
# en: dbd7e528
equipment-none = Nada de eso
# en: 9cbebea5
equipment-all = Ya está todo
# en: f5e40a5f
ask-trip =
    { $count ->
        [one] Mire esto, por favor, cuando vaya a la máquina:
       *[other] Basta con ir una vez a la máquina. Mire estas { $count } cosas, por favor:
    }
# en: 58e17c88
ask-trip-how = Luego vuelva aquí. Le pregunto por cada una, por orden.
# en: 6eab6010
trip-looked = Ya lo he mirado
# en: d66b5f07
trip-there = Ahora estoy al lado
# en: 110956a3
trip-cannot = No puedo ir

## What stands under the drawings

# en: c4457161
drawing-battery-posts = 1 el borne de la batería · 2 el terminal que va encima · 3 el cable
# en: 65e5f163
drawing-earth-strap = 1 el borne negativo de la batería · 2 donde su cable llega al bastidor · 3 la trenza de masa del bastidor al motor · 4 el motor
# en: b2abde83
drawing-fuse-box = 1 la tapa, quitada · 2 un fusible bueno, con el hilo entero · 3 un fusible fundido, con el hilo roto
# en: 362e4527
drawing-stop-knob = 1 el tirador sacado: el motor queda parado · 2 el tirador metido: el motor puede funcionar
# en: c2013a79
drawing-solenoid = 1 el solenoide (automático), el cilindro pequeño · 2 el motor de arranque, debajo · 3 el cable gordo en su espárrago · 4 el cable fino
# en: 60451d1c
drawing-place = El círculo marca dónde suele estar en una máquina como la suya. Solo mirar: motor parado y llave quitada.

## The way out

# en: ab7cc81a
more-choose = ¿Qué quiere hacer?
# en: a70c2a54
more-back = Volver una pregunta atrás
# en: 5cf4340f
more-change = Cambiar una respuesta anterior
# en: 8ed55df7
more-pause = Hacer una pausa
# en: 68def0f5
more-person = Hablar con una persona
# en: cdd3d8f4
more-runs = Ya vuelve a arrancar
# en: 974decf8
more-stop = Parar, no necesito ayuda
# en: 3ef7ad78
more-return = Seguir
# en: 64936b45
answer-go-on = Seguir
# en: 2c41b2dd
answer-person = Hablar con una persona
# en: 81146f44
answer-open-again = Abrirlo otra vez
# en: aefa6514
paused = En pausa. Queda todo guardado. Pulse «Seguir» o escriba cuando quiera.
# en: c0888db0
stopped = Parado. El aviso { $number } queda cerrado. Si al final nos necesita, ábralo otra vez.
# en: 5ffde8c1
person-told = Llame al { $phone } o espere aquí: ya le he dicho a { $shop } que quiere hablar con alguien.
# en: 7f7ceab9
person-there = Hay alguien hasta las { $time }.
# en: abffc440
person-away = Ahora no hay nadie. Vuelve a haber alguien: { $time }.
# en: 40eb2700
person-on-call = Si no puede esperar, llame ahora al { $phone }.
# en: ee3c2311
person-nobody = Aquí todavía no lee nadie del taller. Llame a { $shop }, por favor: { $phone }.
# en: 35229299
runs-again = Bien. Queda apuntado que vuelve a arrancar. No sabemos qué era, así que puede volver a pasar. El aviso { $number } queda cerrado.
# en: 037ac794
reminder = Hace un rato que no contesta. Esto sigue abierto en el aviso { $number }:
# en: 98f727a4
still-fine = ¿Sigue bien la máquina del aviso { $number }?
# en: e03ce1f3
answer-still-fine = Sí, va bien
# en: 9c150f52
answer-came-back = No, ha vuelto a fallar
# en: bfe17655
still-fine-thanks = Gracias. Eso nos ayuda a saber qué la arregló.
# en: 440477d8
came-back-told = Lo siento. El aviso { $number } está abierto otra vez y { $shop } ya lo sabe.
# en: b760d75c
came-back-for-shop = Ha vuelto a fallar: el aviso { $number } está abierto otra vez.
# en: 9d48181c
passed-on = Se lo he pasado al taller.

## Danger

# en: 017de685
alarm-stop = Pare. No intente arrancar.
# en: 83a947ed
alarm-emergency = Llame ahora al { $number }.
# en: fc80f7be
alarm-after = Cuando ya no haya nadie en peligro, pulse el botón o escríbalo.
# en: 11f77456
alarm-again = Sigue abierto: peligro en el aviso { $number }: { $flag }. Todavía nadie ha pulsado «Visto».
# en: 93a85b0a
alarm-unread = Todavía nadie del taller ha leído esto. Si no puede esperar, llame al { $phone }.
# en: 553d72a3
alarm-read = El taller ya lo ha leído. Su número es el { $phone }.
# en: 640926c4
answer-safe-now = Ya no hay peligro, sigamos
# en: 2a474e65
alarm-for-shop = Peligro en el aviso { $number }: { $flag }. Pulse «Visto», por favor, en cuanto se ocupe.
# en: 1daef233
operator-flag-seen = { $who } ha leído su mensaje sobre el peligro.

## What it may be

# en: 3ae1a9f5
what-it-may-be = Qué puede ser
# en: 2038e84f
chance-likely = { $cause }: probable, más o menos { $chance }
# en: 85258084
chance-possible = { $cause }: posible, más o menos { $chance }
# en: 59f71576
chance-less-likely = { $cause }: menos probable, más o menos { $chance }
# en: f3e25bfd
may-be-else = Bien puede ser algo que no está en mi lista.
# en: ea97ee8e
do-not-buy-yet = No compre todavía: { $part }. Antes se comprueba esto: { $check }.
# en: feabbe78
manual-first = El manual de su máquina manda. Lo que no vea claro, déjenoslo a nosotros.
# en: 754d8e8a
what-next-told = Su número de aviso es el { $number }. { $shop } ya lo tiene todo y le escribirá por aquí. Teléfono: { $phone }.
# en: 1277e2ae
what-next-nobody = Su número de aviso es el { $number }. Aquí todavía no lee nadie de { $shop }, así que llame al { $phone } y dé ese número, por favor.
# en: e5aee54d
press-summary = Resumen para reenviar
# en: 26825b2f
summary-shop = Lo lleva { $shop }, { $phone }
# en: 15fbd9f2
closed-thanks = El aviso { $number } queda cerrado. Escriba otra vez cuando una máquina no arranque.
# en: af55a1ad
operator-assigned = De su aviso se encarga ahora { $technician }, de { $shop }.
# en: bc14b54b
solved-cause = Bien, arranca. Lo más probable es que fuera esto: { $cause }.
# en: 48af8006
solved-closed = El aviso { $number } queda cerrado. Si vuelve a pasar, ábralo otra vez o escriba sin más.
# en: 5c65aafd
solved-for-technician = El aviso { $number } queda cerrado: el cliente ha puesto la máquina en marcha.
# en: 2283d13f
runs-for-now = Bien, arranca. Pero puede que esto solo tape la avería. Lo más probable detrás: { $cause }.
# en: 2a087889
runs-for-now-unknown = Bien, arranca. Pero no sé decirle por qué no arrancaba antes.
# en: 7683e7bb
runs-and-kept = Puede que no arranque una segunda vez, así que párela donde se pueda quedar. { $shop } sigue con el aviso.
# en: 26862ec8
operator-closed = El aviso { $number } queda cerrado. Era: { $cause }. Díganos si vuelve a pasar, por favor.

## Reasons

# en: 409cb251
reason-for = a favor: { $what }: { $state } (+{ $weight })
# en: a24d5a53
reason-against = en contra: { $what }: { $state } (−{ $weight })
# en: 5ab71434
reason-for-together = a favor, todo junto: { $what } (+{ $weight })
# en: 2b6775a6
reason-against-together = en contra, todo junto: { $what } (−{ $weight })
# en: 667dbdec
reason-member = { $name }: { $state }
# en: 40cf5982
reason-plain = Usted me dijo: { $what }.
# en: d2791df3
reason-not = no es «{ $state }»
# en: cdbb97cc
would-change-mind = Lo que más cambiaría esto: { $what }: { $state }.

## The slip at the counter

# en: 06ba21ba
slip-title = { $number } · { $machine }, { $fuel }
# en: 3a505798
slip-who = De: { $who }
# en: 7f1594cf
earlier-cases = Esta máquina antes: { $list }
# en: ea454592
earlier-case = { $number } ({ $day })
# en: cd61261e
earlier-case-cause = { $number } ({ $day }: { $cause })
# en: d4b55ea0
nobody-named = no ha dicho el nombre
# en: e37bfd04
slip-complaint = Queja: { $what }
# en: 8ae2584f
symptom-unknown = todavía no se sabe
# en: f287462d
slip-urgency = Prisa: { $urgency }
# en: c8969c9f
slip-urgency-reason = { $because } ({ $sign }{ $points })
# en: d187b229
slip-flag-unseen = { $flag } – aún no lo ha visto nadie
# en: a7324d1e
slip-flag-seen = { $flag } – visto
# en: ba384faf
slip-person-wanted = Quiere hablar con una persona
# en: 10a16a01
slip-phone = Teléfono: { $phone }
# en: 6607359a
slip-place = Sitio: { $place }
# en: ae39c9ca
slip-pin = Ubicación mandada en el mapa
# en: 13526d26
slip-files =
    { $count ->
        [one] Una foto o archivo
       *[other] { $count } fotos o archivos
    }
# en: 627771db
slip-causes = Causas probables
# en: 3373504e
cause-line = { $cause }: { $chance }
# en: 4be5d1b7
slip-rest = Otra cosa { $else } · ya no le pasa nada { $nothing }
# en: cc557984
slip-plan = Plan
# en: 4eecaa7d
plan-step = { $what } ({ $minutes })
# en: 03672f13
plan-call-help = Pedir ayuda por teléfono si nada de esto lo aclara
# en: 0bb11bdb
plan-if = si sale «{ $result }»: { $next }
# en: 5038fc03
plan-more =
    { $count ->
        [one] … y un paso más
       *[other] … y { $count } pasos más
    }
# en: d3e0bef7
plan-minutes = En la máquina: unos { $median }, nueve de cada diez veces menos de { $most }
# en: b5dc11cc
slip-kit = Para cargar
# en: 29515e58
kit-part = { $part } – hace falta en el { $chance } de los casos
# en: 5fcdba58
kit-part-own = { $part } · { $own }
# en: 256db2a3
part-own = nuestro número { $number }, en almacén: { $stock }
# en: 80a5990b
part-own-shelf = nuestro número { $number }, en almacén: { $stock }, estante { $shelf }
# en: fd39946e
part-own-none = nuestro número { $number }, no queda ninguna
# en: 10ec2e7e
part-look-up-by = por el número de serie; tiene que coincidir: { $fit }
# en: eb01c38c
part-look-up = por el número de serie
# en: c1b9bf43
kit-tools = Herramientas: { $tools }
# en: b9351183
kit-covers = Con esto se puede reparar en el { $chance } de los casos
# en: 94544f81
slip-interview = El cliente aún está contestando
# en: d0deb6ab
slip-waiting = A la espera de que alguien decida
# en: 5e128c2c
slip-assigned = Lo tiene { $technician }
# en: 9a23d9c3
slip-on-site = { $technician } está en la máquina
# en: 44262614
slip-looked-after = Se ocupa { $who }
# en: 41e5a9b4
slip-called-off = Cerrado por el cliente
# en: 55b5ed6f
slip-ended = Cerrado: { $how }
# en: 2ef168d0
slip-waited = Espera desde: { $since }
# en: 0a2e0187
slip-distance = Por carretera unos { $km }, { $minutes } cada viaje
# en: f31f0fa0
slip-pays = Paga: { $payer } – desplazamiento aún sin acordar
# en: 69a64bc2
slip-pays-agreed = Paga: { $payer } – desplazamiento acordado
# en: 1146987e
slip-by-chat = Posibilidad de arreglarlo sin ir: { $chance }
# en: b48c06f4
slip-asked = Preguntado al cliente, aún sin respuesta: { $question }
# en: c29e71b6
slip-booked = Visita acordada: { $from } a { $until }
# en: f47bfd81
slip-second-visit = Hace falta una segunda visita. Llevar: { $what }
# en: a6658f25
slip-took-in = El aviso { $other } es la misma avería
# en: 2e538349
payer-own = el cliente
# en: e8ad6930
payer-warranty = la garantía
# en: 3488aaa1
payer-contract = el contrato de mantenimiento
# en: 04de072f
payer-comeback = nadie, ha vuelto a fallar
# en: 149c200f
end-solved-by-chat = arreglado por chat
# en: d7d41bf6
end-visit = reparado en una visita
# en: a213e82e
end-collected = máquina recogida o traída al taller
# en: 43a1e6c2
end-part-handed-over = pieza entregada
# en: 3beab644
end-loan-machine = máquina prestada
# en: 36d4d13d
end-referred = pasado a otro
# en: 64928c71
end-nothing-found = no se encontró nada
# en: 282dd98f
end-called-off = anulado
# en: 9ae8d799
end-duplicate = la misma avería que otro aviso
# en: 4d3e18f3
press-acts = Más acciones …
# en: d1ab4fc3
press-reopen = Abrir el aviso otra vez
# en: 73df10fc
slip-closed = Cerrado. Causa: { $cause }
# en: 378f0ec4
press-seen = Visto
# en: 5d2c14aa
press-noticed = Me ocupo yo
# en: 62d8d7fc
press-hand-over = Dárselo a un mecánico
# en: 535b93a2
press-take-back = Quitárselo
# en: 01d2d66d
press-files = Fotos y archivos
# en: d6655641
which-technician = ¿Quién se lleva el aviso { $number }?
# en: 5640e7d6
no-technicians = Todavía no hay ningún mecánico. Invite a uno con «invitar».
# en: 6dac481b
handed-to = Se lo lleva { $technician }
# en: 6d1d46cd
has-it-already = Ya lo tiene { $technician }
# en: 3690f1d5
nobody-has-it = No lo tiene nadie
# en: 7fc63c3e
no-longer-there = Esa persona ya no está en el taller
# en: 9712cef7
seen-already = Ya estaba visto
# en: baa724be
press-mark = Decir qué se ve
# en: 26250e62
press-mark-else = Otra cosa …
# en: e3bbed74
press-mark-danger = Un peligro
# en: 4b1c4993
mark-what = ¿Qué se ve en la foto?
# en: 00a7e874
mark-danger = ¿Qué peligro se ve? Al cliente se le dice al momento qué hacer.
# en: 51e9f358
mark-how = { $what }: ¿cómo está en la foto?
# en: ad7f6833
marked = Apuntado en el aviso { $number }, visto en una foto: { $what }: { $state }.
# en: e01fc1d1
press-unmark = Quitarlo
# en: 6f06899f
past-photo-marked = foto mirada
# en: 3a7f34b8
no-files = No hay fotos ni archivos
# en: 342b79f9
technician-load =
    { $count ->
        [one] { $technician } – un trabajo abierto
       *[other] { $technician } – { $count } trabajos abiertos
    }
# en: 190c4d0f
technician-fit = { $technician } · { $skills }: { $fit }
# en: 62711000
has-it-now = El aviso { $number } lo tiene ahora { $technician }
# en: 40bdbe75
done = Hecho
# en: 426d5e16
is-open = Ya está abierto
# en: 3b186c14
acts-choose = Aviso { $number }: ¿y ahora?
# en: 21452b2d
press-ask = Preguntar al cliente
# en: 34bdb51b
press-ask-photo = Pedir una foto
# en: 58f784c9
press-help = Darle al cliente algo que probar
# en: 857a5144
help-which = ¿Qué tiene que probar el cliente del aviso { $number }? Se le explica paso a paso, con sus precauciones.
# en: 6f663489
help-none = Ya no queda nada sin peligro que el cliente del aviso { $number } pueda probar.
# en: 379ecf2d
help-choice = Arregla en un { $cures }: { $what }
# en: 63693399
help-choice-hides = Arregla en un { $cures }, tapa en un { $masks }: { $what }
# en: 2bbe1866
help-choice-only-hides = Solo tapa en un { $masks }: { $what }
# en: 91db2b6d
help-over = Eso ya se probó
# en: c15855af
help-danger = En este aviso hay un peligro abierto. Primero eso.
# en: 62b543c4
help-given = Se lo he pasado al cliente
# en: e287db1d
help-aloud = El aviso { $number } no tiene chat. Léalo en voz alta y añada lo que salga:
# en: 34cf6409
shop-suggests = { $who }, del taller, le propone probar esto:
# en: 91b5c4de
past-help-given = algo que probar, pasado
# en: fe35f166
press-heard = Añadir lo dicho por teléfono
# en: 0909a524
press-book = Acordar una visita
# en: 4b7335d3
press-unbook = Anular la visita
# en: 6caf8241
press-pay = Quién paga
# en: 923e41d2
press-pass = Pasarlo a otro encargado
# en: d26be8a4
press-merge = Misma avería que otro aviso
# en: 0d2ff0c2
press-end = Cerrar el aviso
# en: 3232e457
press-history = Historial
# en: e60511c9
press-machine = La máquina: ver, corregir
# en: f29cea55
press-slip = Ver la ficha
# en: 6184703c
press-leave = Dejarlo
# en: 5af9a117
prompt-ask = Escriba qué hay que preguntarle al cliente del aviso { $number }. Yo se lo paso; nadie ve un número.
# en: 2daa0a18
prompt-heard = Escriba lo que ha oído sobre el aviso { $number }. Lo que entienda de ello cuenta como respuesta de segunda mano.
# en: 65d9a3a7
left-it = Se queda como estaba.
# en: ae6cc290
call-how = Escriba lo que oye detrás del comando: /call García, tractor de la empacadora, solo hace clac, las luces bien, la vega de abajo
# en: 981617a5
phone-case = Aviso { $number }, por teléfono
# en: 48a40ee5
phone-read = Lea en voz alta:
# en: 06af90e1
phone-options = { $options }
# en: 50cd3254
phone-answer = Escriba las respuestas en una línea, en este orden y con comas: sí, fuertes, no lo sé.
# en: 2a6a7570
phone-nothing = De eso todavía no he entendido nada; queda guardado.
# en: 09ffed81
phone-enough = Por teléfono ya no vale la pena preguntar más.
# en: 028ccd60
press-sticker = Código para imprimir de esta máquina
# en: 00d8cf82
sticker-here = Imprímalo y péguelo en la máquina. Quien lo escanee empieza aquí y ya se sabe qué máquina es.
# en: 11e19a5b
sticker-too-early = Todavía no se sabe qué máquina es
# en: 5aa5c442
sticker-scan = ¿No arranca? Escanee esto.
# en: 95056b2b
sticker-shop = { $shop }, { $phone }
# en: 871e34a7
press-start-link = Enlace a este aviso para el cliente
# en: 4ca2a17f
start-link = Mande esto al cliente del aviso { $number }. Vale una sola vez; después, sus fotos y respuestas entran en el aviso:
# en: faeb576e
shop-asks = { $who }, del taller, pregunta:
# en: cdce18e5
shop-asks-photo = { $who }, del taller, le pide una foto. Mándela aquí mismo.
# en: 68a33ba0
asked-operator = Pasado al cliente del aviso { $number }.
# en: a652912d
operator-replied = Aviso { $number }, respuesta a: { $question }
# en: 3885e950
no-chat = El cliente del aviso { $number } no tiene chat aquí. Llámele y añada lo que le diga.
# en: 35f107cb
book-when = ¿Cuándo es la visita del aviso { $number }?
# en: 13f02767
book-type = O escríbalo: 9-11, o 27/11 14:30-16.
# en: 1acbc46a
book-window = { $from } a { $until }
# en: 2dbbd2b1
book-not-understood = Ahí no leo ninguna hora. Escríbalo así: 9-11, o 27/11 14:30-16.
# en: 227c0ff6
book-past = Esa hora ya ha pasado.
# en: 4facba5e
book-overlap = { $technician } está en el aviso { $number }: { $from } a { $until }.
# en: c8f30808
book-travel = Falta tiempo para el viaje: { $technician } está en el aviso { $number }: { $from } a { $until }.
# en: 3aa92833
booked = Acordado: { $from } a { $until }
# en: 106e4933
not-booked = No hay nada acordado
# en: 64024480
visit-booked = Visita al aviso { $number }: { $from } a { $until }
# en: 07f27b73
visit-unbooked = Anulada: visita al aviso { $number }, { $from } a { $until }
# en: 2be286c6
operator-arrived = { $technician }, de { $shop }, ya está en su máquina.
# en: 88d9075f
operator-booked = { $shop } irá: { $from } a { $until }.
# en: 84ddd9e4
operator-unbooked = La visita ({ $from } a { $until }) queda anulada. Le avisaremos de una nueva.
# en: 601f3e4d
merge-which = ¿Qué aviso es la misma avería que el { $number }? Púlselo o escriba su número.
# en: 79fc4956
merge-with = { $number } · { $machine } · { $who }
# en: 3df8c7d8
merge-unknown = No hay otro aviso abierto { $number }.
# en: a7224931
merge-sure = ¿Cerrar el { $number } por ser la misma avería que el { $other }? Lo dicho pasa allí como nota.
# en: 06091b3e
merge-yes = Sí, son el mismo
# en: 1895e225
operator-merged = El aviso { $number } sigue como aviso { $other }.
# en: 35069337
pay-which = ¿Quién paga? ¿Y el cliente está conforme con pagar el desplazamiento?
# en: e621bedf
pay-agreed = { $payer } – conforme
# en: 220d4571
pay-open = { $payer } – sin preguntar
# en: 1c0e9cd2
pass-which = ¿Quién se lo queda?
# en: b0b66c25
pass-nobody = No hay otro encargado.
# en: de8b46a7
passed-to-you = Le han pasado el aviso { $number }.
# en: 817542b9
end-which = ¿Cómo acabó?
# en: 06b6d32d
technician-closed = El taller ha cerrado el aviso { $number }.
# en: ea7b207c
operator-ended = El aviso { $number } queda cerrado: { $how }. Escriba otra vez si nos necesita.
# en: 9475c291
operator-reopened = El aviso { $number } está abierto otra vez.
# en: b2dcb365
history-title = Historial del aviso { $number }
# en: 17e965aa
history-line = { $when }: { $what } ({ $who })
# en: 0d7dd10f
past-case-opened = abierto
# en: 300d17ab
past-flag-raised = peligro avisado
# en: 88378c9d
past-flag-seen = peligro visto
# en: b27190cb
past-person-wanted = pidió una persona
# en: 2c76b3f7
past-shop-saw = atendido
# en: 3a61278e
past-case-assigned = dado a un mecánico
# en: 8c8f071f
past-case-taken-back = quitado al mecánico
# en: 6095c47b
past-visit-set-out = en camino
# en: 8fde3304
past-visit-started = visita empezada
# en: 79746dec
past-step-undone = un paso quitado
# en: 68011a17
past-visit-cut-short = hace falta segunda visita
# en: 4be1d47b
past-cause-confirmed = causa puesta
# en: b5d7dfbd
past-case-closed = cerrado
# en: 0f975216
past-case-reopened = abierto otra vez
# en: ecdf9d65
past-operator-asked = preguntado al cliente
# en: ac0b94ab
past-operator-replied = el cliente contestó
# en: 7aed5380
past-visit-booked = visita acordada
# en: ba156646
past-visit-unbooked = visita anulada
# en: db7cb15b
past-payment-told = quién paga
# en: 88fc6365
past-case-took-in = otro aviso unido a este
# en: 432da86d
past-case-passed-on = pasado a otro encargado
# en: 4e1697a6
past-operator-joined = el cliente entró en el chat
# en: 84e688cb
case-is-closed = Ese aviso está cerrado.
# en: fa562f6b
note-kept = Nota guardada en el aviso { $number }.

## The technician

# en: 773755fd
sheet-title = Aviso { $number } · { $machine }
# en: 7bc7a081
sheet-note = Nota: { $note }
# en: e397f30d
sheet-circuit = Circuito de arranque
# en: 060daca4
sheet-told = Lo que se sabe
# en: 539e2244
sheet-record = Lo encontrado y lo hecho
# en: b6a0ea4f
sheet-too-early = Todavía no se sabe nada que poner en una hoja.
# en: aea33d5a
share-else = Otra cosa
# en: 82a6d317
circuit-supply = Alimentación
# en: c59bdd58
circuit-control = Mando
# en: 075309f4
circuit-power = Fuerza
# en: f53a41d0
point-cause = { $cause }: { $median }
# en: 6c40e9ad
look-alike = Aún no se distinguen: { $causes }.
# en: ce7eae6e
look-alike-by = Aún no se distinguen: { $causes }. Lo que las distingue: { $check }.
# en: 34a3ed72
brief-for = a favor: { $what }
# en: 31835c6d
brief-against = en contra: { $what }
# en: 7b879c3f
brief-for-same = a favor: lo mismo
# en: 9c36747b
brief-against-same = en contra: lo mismo
# en: b613bd24
seen-on-photo = { $what } (visto en una foto)
# en: 93f86d35
point-only = { $name }
# en: 900a8a34
point-readings-1 = { $name } – { $reading1 }
# en: b8c13bc8
point-readings-2 = { $name } – { $reading1 } – { $reading2 }
# en: 473ae35a
point-readings-3 = { $name } – { $reading1 } – { $reading2 } – { $reading3 }
# en: 7ffada20
sheet-points = Lo que debe marcar el tester
# en: 26c58140
press-causes = Dibujo de las causas
# en: 6efa1b62
press-circuit = Circuito y medidas
# en: 36f4d984
share-only = { $chance }
# en: 4a28d49a
press-paper = Hoja de trabajo para imprimir
# en: 2f7d65fe
press-report = Parte de trabajo para imprimir
# en: 8a9e43de
press-set-out = Voy de camino
# en: feb5ede8
operator-on-the-way = { $technician }, de { $shop }, va de camino.
# en: 4927d1bb
told-operator = El cliente ya lo sabe
# en: 12bdb949
slip-set-out = { $technician } va de camino
# en: da324e6d
press-begin = Empezar en la máquina
# en: b60e5c29
technician-taken-back = El taller ha retirado el aviso { $number }.
# en: be40d5dc
expected-healthy = Sano: { $median } ({ $low } a { $high })
# en: 50de3901
expected-cause = { $cause }: { $median } ({ $low } a { $high })
# en: f0214227
step-left = dejado por ahora
# en: cdf5d875
late-reading = { $text }: ¿de qué medición es?
# en: b696a226
step-tools = Herramientas: { $tools }
# en: f36f30ec
cautions-as-before = como antes – { $names }
# en: 7bb6bd3d
step-parts = Piezas: { $parts }
# en: 2869049a
press-skip-step = No se pudo hacer, siguiente
# en: 7c79b92c
press-found = He encontrado la causa
# en: eaf29753
press-undo = Quitar el último paso
# en: d4ec27a3
press-sheet = Ver la hoja
# en: d023566d
moved = { $cause }: { $before } → { $after }
# en: f9b07e93
plan-at-end = Al plan no le quedan pasos. Ponga la causa o pida ayuda por teléfono.
# en: c171f40a
remedy-runs = Hecho – arranca
# en: b6d02024
remedy-no-change = Hecho – sigue igual
# en: 8e8467a6
remedy-skip = No se pudo hacer
# en: 1717e8d1
which-cause = ¿Cuál era la causa?
# en: b26c323e
cause-choice = { $cause } ({ $chance })
# en: 0c4492cb
cause-other = Otra cosa
# en: f54f73fe
ask-cause = ¿Cuál era la causa?
# en: 4782b8cc
ask-cause-words = Escriba en pocas palabras qué era y qué ha hecho.
# en: a3fecf2d
ask-ran = ¿Arrancó, y volvió a arrancar al probar una segunda vez?
# en: 8574613e
ran-yes = Sí, las dos veces
# en: bbd9a77b
ran-not-yet = Todavía no
# en: 91ba70ff
stays-open = El aviso { $number } sigue abierto.
# en: fc32e5dc
press-short = Falta algo: segunda visita
# en: f8332b4a
ask-missing = ¿Qué falta para la segunda visita? Pulse la pieza o escríbala.
# en: a6370eaa
second-visit = El aviso { $number } sigue abierto para una segunda visita. Llevar: { $what }
# en: 12473774
operator-second-visit = La reparación no está terminada: hace falta una segunda visita. Hay que llevar: { $what }
# en: 6b9316fc
ask-hand-back = Antes de devolverla: ¿se queda callado el motor de arranque cuando debe?
# en: 56bd43e0
hand-back-how = Apártese de la máquina. Gire la llave un momento con una marcha metida, luego con la toma de fuerza conectada, luego sin nadie en el asiento: las tres veces el motor de arranque tiene que quedarse callado.
# en: 6cf48ae7
hand-back-interlocks = lo que impide que arranque con una marcha metida, con la toma de fuerza conectada o sin nadie en el asiento
# en: 69756639
hand-back-fine = Se queda callado las tres veces
# en: bf4cc3d7
hand-back-not-fine = No, arranca
# en: a89bda85
hand-back-could-not = No se pudo probar
# en: 3ca0a122
hand-back-stop = No devuelva la máquina así: puede arrancar por sorpresa. Arréglelo primero y pruebe otra vez.
# en: 1946bf5f
ask-hand-back-why = ¿Por qué no se pudo probar? Una línea; se le dice al cliente.
# en: 8479e7bb
hand-back-untested = Sin probar: { $what }. Motivo: { $why }. Tenga cuidado hasta que se pruebe.
# en: ba4e1b8e
operator-done = Lo que se ha hecho: { $what }.
# en: 6ab6564c
record-title = Para el registro del aviso { $number }
# en: b04165c7
record-cause = Causa: { $what } ({ $how })
# en: bd055acb
record-done = Hecho: { $what }
# en: 3438a06f
record-minutes = En la máquina: { $minutes }
# en: 93d9b119
record-minutes-choice = { $minutes }
# en: 7a753a8a
record-used = Gastado: { $parts }
# en: 32a34d4f
record-back = Devuelto: { $parts }
# en: 43f420d8
record-correct = Pulse lo que aún no esté bien: minutos, piezas gastadas, cómo sabe la causa.
# en: 30f5241b
record-photos = Las fotos que mande hoy todavía entran en este aviso.
# en: 881ece2d
file-kept-with = Guardado en el aviso { $number }.
# en: bf670a94
how-ran-after-this = arrancó después de hacer solo esto
# en: 5a4ddef4
how-measured = medido
# en: cdaad9d5
how-several-at-once = varias cosas a la vez
# en: 66ec4bbf
how-guess = una suposición
# en: f77e2ca3
ticked = ✓ { $label }
# en: ddab4520
unticked = { $label }
# en: 6f71f6dc
press-another-cause = Había además otra causa
# en: e8529fb7
which-causes = ¿Qué más estaba mal? Pulse todas las causas que encontró.
# en: 0b4d3b5f
visit-closed = El aviso { $number } queda cerrado. Gracias.

## People of the shop

# en: b13953fd
not-allowed = Eso no le toca pulsarlo a usted.
# en: 00643cdf
nothing-done = No se ha cambiado nada.
# en: acf290da
no-member = Usted ya no es de la gente de { $shop }, así que esto no se ha apuntado en ningún aviso. Para avisar de una máquina propia, escriba /new o llame al { $phone }.
# en: 740ff530
taken-out = Usted ya no es de la gente de { $shop }. Gracias. Para avisar de una máquina propia, escriba sin más.
# en: f42e9afc
technician-gone = { $technician } ya no está en el taller: el aviso { $number } espera un mecánico.
# en: 4e8cb5cc
welcome-member = Bienvenido. Desde ahora su puesto es: { $role }.
# en: 56a26d7a
link-used-up = Ese enlace ya se usó o ha caducado. Pida otro, por favor, o llame al { $phone }.
# en: cce970fc
role-owner = dueño
# en: b3b4cc8e
role-dispatcher = encargado de avisos
# en: 7c5495e4
role-technician = mecánico
# en: fb4e6f2b
invite-which = ¿Para quién es el enlace nuevo?
# en: a220bc80
invite-link = Enlace para un nuevo { $role }
# en: 4c064b41
invite-once = Vale una sola vez y siete días. Mándelo solo a la persona a la que va.
# en: 0f184a67
people-list = Gente del taller
# en: 390d7c55
people-one = { $name } – { $role }
# en: 8b32b7f5
list-calls =
    { $count ->
        [one] Un aviso abierto
       *[other] { $count } avisos abiertos
    }
# en: 0a785205
list-jobs =
    { $count ->
        [one] Tiene un trabajo
       *[other] Tiene { $count } trabajos
    }
# en: 92f99fb3
no-calls = No hay avisos abiertos.
# en: a8b2bd8c
no-jobs = Ahora no tiene trabajos.
# en: c048ce7c
no-find = Ningún aviso lleva esas palabras.
# en: 402588a8
find-what = Escriba lo que busca: «/find garcía empacadora». Un número, un nombre, una máquina, un sitio o una palabra.
# en: 70c3b59c
list-find =
    { $count ->
        [one] Un aviso encontrado
       *[other] { $count } avisos encontrados
    }
# en: e228875d
list-new = ● { $label }
# en: 99d51c61
list-urgent = ! { $label }
# en: ebb4682d
list-closed = ✓ { $label }
# en: 0bd2a49c
press-next-page = Página siguiente
# en: 8cdf4eda
member-what = ¿Qué hay que cambiar de { $name }?
# en: 6f9b3999
press-make-role = Pasa a ser { $role }
# en: 2e363ce5
press-remove = Sacar a { $name } del taller
# en: 7d6c67a4
remove-sure = ¿Sacar a { $name } del taller? Sus avisos abiertos vuelven al mostrador; solo vuelve a entrar con un enlace nuevo.
# en: a963c675
remove-yes = Sí, sacarlo
# en: 15e9e81e
member-changed = Hecho. Vale desde ahora.
# en: 78484366
report-title = { $open } abiertos, { $closed } cerrados
# en: da88f157
report-end = { $end }: { $count }
# en: 165c5c20
report-by-chat = Arreglado por chat: { $share } de { $count } ({ $low } a { $high })
# en: d519e7e2
report-by-chat-none = Arreglado por chat: aún no hay nada cerrado
# en: dfa64903
report-first-visit = Arreglado en la primera visita: { $share } de { $count } ({ $low } a { $high })
# en: 3811a364
report-first-visit-none = Arreglado en la primera visita: aún no hay visitas cerradas
# en: 5407f88b
report-second-trips = Visitas que acabaron sin reparar: { $count }
# en: 4de8abd0
report-missing = Faltó { $part }: { $count }
# en: bde39069
report-minutes = Minutos en la máquina: { $taken }, previstos { $foreseen } (medianas de { $count }); dentro del máximo previsto: { $within }
# en: d5de0e33
report-comebacks = Volvieron a fallar antes de { $days } días: { $count }
# en: 305a4e16
report-causes = Causas encontradas
# en: ab6f3a43
report-cause = { $cause }, { $machine }: { $count }
# en: 52662b44
report-calibration = ¿Acertaron los porcentajes? Resultados: { $count }
# en: 5daf0054
report-bin = se dijo { $claimed }, se cumplió { $held } de { $count }
# en: 26aa1bec
press-table-cases = Avisos en una tabla
# en: 1430e37f
press-table-rates = Lo aprendido en una tabla
# en: bf199230
list-case = { $number } · { $machine }
# en: ce5f0d02
list-case-alarm = Peligro: { $number } · { $machine }
# en: 97781cce
stray-dispatcher = Para hacer algo con un aviso, pulse un botón debajo de su ficha: «avisos» los enseña. Para avisar de una máquina propia, escriba /new.
# en: 821a3b38
stray-technician = No tiene ningún trabajo abierto. «trabajos» los enseña. Para avisar de una máquina propia, escriba /new.
# en: 0b54fc10
counter-here = Las fichas de los avisos nuevos llegarán desde ahora a este grupo.
# en: 1d595e10
group-refused = De los avisos solo hablo en el grupo del taller y en chats privados.
# en: a03e4645
hand-all-none = No lleva ningún aviso abierto.
# en: 18db98ed
hand-all-who =
    { $count ->
        [one] ¿Quién se queda con el aviso que usted lleva?
       *[other] ¿Quién se queda con los { $count } avisos que usted lleva?
    }
# en: bb1960a0
hand-all-yours =
    { $count ->
        [one] { $who } le ha pasado un aviso:
       *[other] { $who } le ha pasado { $count } avisos:
    }
# en: b8effa6f
hand-all-done =
    { $count ->
        [one] Su aviso lo lleva ahora { $who }.
       *[other] Sus { $count } avisos los lleva ahora { $who }.
    }
# en: 5c447175
duty-now = De guardia está { $who }, hasta: { $until }.
# en: 5218be6d
duty-nobody = Ahora no hay nadie de guardia: los peligros se avisan a todos los del mostrador.
# en: fe36b623
duty-next = { $who }: { $from } a { $until }
# en: 853a67b3
duty-what = A quien está de guardia se le avisa de los peligros a cualquier hora, también en las horas de silencio.
# en: 17ee0018
duty-how-long = ¿Cuánto tiempo está de guardia { $who }?
# en: c40a42be
duty-typed = Otras horas, por escrito: /duty { $who } 17:00-22:00 – /duty { $who } 27.11. 17:00 - 30.11. 07:00
# en: d992d874
duty-span = { $from } a { $until }
# en: 89f99a33
duty-set = De guardia: { $who }, { $from } a { $until }.
# en: 7df254d8
duty-yours = Está usted de guardia: { $from } a { $until }. Se le avisa de los peligros a cualquier hora.
# en: 0fd3fc0f
duty-ended = Desde ahora no hay nadie de guardia.
# en: 9e5a7866
press-duty-nobody = Nadie desde ahora

## Help and settings

# en: 934dcf3f
help-operator = { $name }: dígame qué hace su máquina y yo averiguo qué puede tener. También puede llamar al { $phone }.
# en: be16cdb5
help-technician = Usted es mecánico de { $name }. Le doy los avisos que le encargan.
# en: 9ca8dfd2
help-dispatcher = Usted atiende el mostrador de { $name }. Los avisos nuevos llegan aquí como fichas.
# en: c1429ea4
help-owner = Usted lleva { $name }. Los avisos nuevos llegan aquí como fichas.
# en: 54a32275
help-command = /{ $name } – { $what }
# en: af193041
command-new = avisar de una máquina que no arranca
# en: 610be8b1
command-person = hablar con una persona
# en: 213d2725
command-help = qué sé hacer
# en: 0a6f87d8
command-language = elegir el idioma
# en: ed3292b6
command-forget = borrar lo que se guarda de usted
# en: ef891e4f
command-export = recibir una copia de lo que se guarda de usted
# en: 6d288a38
command-machines = sus máquinas
# en: 726b2249
command-jobs = sus trabajos
# en: 85a01a89
command-calls = avisos abiertos
# en: fa5e0d7b
command-call = apuntar una llamada: /call García, tractor de la empacadora, solo hace clac
# en: 7ca6e245
command-find = buscar un aviso
# en: 2b82dc86
command-handover = pasar sus avisos a otro encargado
# en: 50b3b169
command-duty = quién está de guardia
# en: d267705d
command-report = en qué han quedado los avisos
# en: d96eda83
command-invite = invitar a alguien al taller
# en: 06c375e4
command-people = quién es del taller
# en: 044d6aff
command-start = empezar
# en: d1e4d436
language-which = ¿Qué idioma?
# en: 1bccca26
language-set = Desde ahora, en este idioma.
# en: 269e1b4d
language-offer = ¿Sigo en { $language }?
# en: a518384b
language-offer-yes = Sí, en { $language }
# en: 57b72cd1
language-offer-no = No, en { $language }
# en: 2b9751ef
language-en = English
# en: 0eff62ce
language-es = Español
# en: 66749d36
language-de = Deutsch
# en: 9c78d09e
export-here = Aquí está todo lo que se guarda de usted.
# en: 77502039
own-machines = Sus máquinas. Pulse una para verla o cambiarla.
# en: 07586558
own-machines-none = Todavía no hay guardada ninguna máquina suya. Se guarda en cuanto avisa de una.
# en: 9b386632
own-machine-gone = Esa máquina ya no está en su lista.
# en: f2f55bf5
own-machine-fuel = Funciona con: { $fuel }
# en: 1215c438
own-machine-volts = Batería: { $volts }
# en: 5a23fc75
own-machine-serial = Número de serie: { $serial }
# en: c8ef1944
own-machine-cases = Avisos hasta ahora: { $list }
# en: 428462d0
own-machine-name = Cambiarle el nombre
# en: 7107269a
own-machine-plate = Escribir su número de serie
# en: cce4d15b
own-machine-kind = Es otro tipo de máquina
# en: b2a39ef3
own-machine-other-fuel = Funciona con: { $fuel }
# en: 6bc29eb4
own-machine-other-volts = Lleva { $volts }
# en: bb10c474
own-machine-out = Quitarla de mi lista
# en: 27631beb
own-machine-write-name = Escriba cómo llama usted a esta máquina.
# en: e57e7003
own-machine-write-plate = Escriba el número de serie tal como está en la placa.

## Words that can be written in place of a command; several stand with commas between them.

# en: 71b73c93
word-new = aviso nuevo, máquina nueva
# en: cba924ab
word-help = ayuda
# en: d7571a1d
word-language = idioma
# en: fc9151d0
word-forget = olvidar, olvídame, borrar mis datos
# en: 0987c100
word-export = exportar, mis datos
# en: 331f93dd
word-machines = mis máquinas
# en: c8c3744e
word-pause = pausa, espera, luego, ahora no, un momento
# en: 28d7f0b7
word-change = cambiar, cambiar una respuesta
# en: 40741b48
word-runs = ya arranca, ha arrancado, ha arrancado solo, ya funciona, vuelve a arrancar, ya está en marcha
# en: 10936191
word-all-clear = todo bien, todo está bien, está todo bien, todo en orden, todo seguro, todo ok, todo correcto, todos bien, estamos bien, estamos todos bien, todos estamos bien, sin peligro, no hay peligro, ningún peligro, no hay ningún peligro, nada de peligro, fuera de peligro, sí, sí todos bien, sí todo bien, sí estamos bien, sí todos, estoy bien, nada de eso, nada, nadie, nadie herido, no hay nadie herido, no hay heridos, bien, ok, vale, tranquilo, todo bn, todo vien, todos vien, estamos vien, tamos bien
# en: 6fae7996
word-dont-know = no lo sé, no sé, nose, nolose, no se decirle, ni idea, no estoy seguro, no estoy segura, no me acuerdo, no recuerdo
# en: 57b04080
word-skip = saltar, omitir, no puedo, no se puede, no, no hay foto, sin foto, no tengo foto, ahora no puedo, no tengo teléfono
# en: 489fa267
word-safe-now = ya no hay peligro, ya está, ya pasó, ya ha pasado, ya es seguro, todo bien ya, ya está todo bien, ya está apagado, sigamos, seguir
# en: f2761430
word-none-of-these = ninguna, ninguno, ninguna de estas, ninguno de estos, ninguna de ellas, ninguno de ellos, no está, no está en la lista, nada de esto
# en: ff3fb244
word-places = uno, dos, tres, cuatro, cinco, seis
# en: 89790076
word-jobs = trabajos, mis trabajos
# en: a6ca6a04
word-calls = avisos
# en: a14e4eff
word-call = llamada
# en: fad7f290
word-find = buscar
# en: 493d226d
word-report = informe
# en: fe35170f
word-duty = guardia
# en: f30dee1b
word-invite = invitar
# en: 180a5237
word-people = gente
# en: e6c74280
word-handover = relevo, pasar avisos
# en: 4f00a7d6
forget-sure = ¿Borrar todo lo que se guarda de usted?
# en: b9bd8725
forget-what = Se borran su nombre, número, sitio, palabras y fotos. Lo averiguado sobre la máquina se queda, sin su nombre.
# en: 13dc7bd6
forget-yes = Sí, borrarlo
# en: 325be0cd
forget-no = No, dejarlo
# en: c6e6047f
forgotten = Hecho. Ya no se guarda nada de usted, salvo este chat en su propio teléfono.
# en: 0330c6e2
apology = Aquí ha fallado algo. Lo que mandó está guardado y alguien lo mirará.

## What the bot says of itself before anybody has written

# en: 64dfafd8
description = ¿No arranca una máquina? Escriba lo que hace o mande una foto. Le hago unas pocas preguntas cortas, averiguo qué puede tener y le digo al taller qué hay que llevar.
# en: 310b0118
description-short = Le dice a usted y al taller qué puede tener una máquina que no arranca.
