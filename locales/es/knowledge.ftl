# reviewed: not yet

### Palabras de flows/: averías, preguntas, respuestas, pruebas, piezas.

## Averías

# en: 70aef0ea
fault-air-filter-blocked = Filtro del aire o admisión atascados
# en: 90803306
fault-air-filter-blocked-explain = Un filtro sucio, un nido o un trapo olvidado dejan al motor sin aire suficiente para arrancar.
# en: c49e69db
fault-exhaust-blocked = Escape atascado
# en: 890d63c9
fault-exhaust-blocked-explain = Un nido, barro, carbonilla o un silenciador hundido no dejan salir el humo, y el motor se para o no arranca.
# en: 6b9b6ca4
fault-battery-flat = Batería descargada
# en: fe7ebe59
fault-battery-flat-explain = A la batería le queda poca carga para mover el motor.
# en: cc89929f
fault-battery-sulphated = Batería gastada
# en: e0ce996c
fault-battery-sulphated-explain = La batería marca voltios pero ha perdido la fuerza; se viene abajo en cuanto tira el motor de arranque.
# en: 825643b3
fault-battery-shorted-cell = Batería con un vaso muerto
# en: fbe59397
fault-battery-shorted-cell-explain = Un vaso está en corto: faltan dos voltios y la batería nunca se llena.
# en: eb8a87c0
fault-battery-dead = Batería muerta del todo
# en: d0acef94
fault-battery-dead-explain = Apenas le quedan voltios; muchas veces se ha estropeado de estar vacía.
# en: 0d8d13f1
fault-battery-broken-link = Rotura dentro de la batería
# en: 89ea32e7
fault-battery-broken-link-explain = Hay un puente o un borne roto por dentro; los voltios parecen buenos hasta que se le pide corriente.
# en: 6798100a
fault-plus-clamp-corroded = Terminal positivo sulfatado o flojo
# en: fed94ee5
fault-plus-clamp-corroded-explain = La unión con el borne positivo deja pasar poca corriente.
# en: 729f8e43
fault-earth-strap-corroded = Cable de masa, o su otra punta, sulfatado
# en: 2eb95ecb
fault-earth-strap-corroded-explain = La vuelta del motor al borne negativo deja pasar poca corriente.
# en: fe4660f1
fault-battery-lead-off = Un cable de la batería está suelto
# en: 71d62bf9
fault-battery-lead-off-explain = Uno de los dos cables de la batería no hace contacto.
# en: c1230c7d
fault-earth-strap-broken = Cable de masa cortado
# en: f6d63a69
fault-earth-strap-broken-explain = El motor se ha quedado sin vuelta al borne negativo.
# en: 98f511c8
fault-frame-earth-bad = Masa pequeña de la instalación en mal estado
# en: fe9091ea
fault-frame-earth-bad-explain = El cuadro y los interruptores han perdido su masa pequeña, y no les funciona nada.
# en: dadf0d89
fault-plus-cable-bad = Cable positivo, o su otra punta, en mal estado
# en: 493b4f84
fault-plus-cable-bad-explain = El cable gordo positivo, o su punta en el solenoide, deja pasar poca corriente.
# en: 33a072a4
fault-plus-cable-touches-metal = El cable positivo o su ojal toca metal
# en: 31f4a166
fault-plus-cable-touches-metal-explain = El cable gordo positivo, o el ojal de su punta, toca el motor o el bastidor y pone la batería en corto.
# en: 5d343556
fault-starter-cable-bad = Cable del contactor al motor de arranque en mal estado
# en: 8fb46ba4
fault-starter-cable-bad-explain = El cable entre el contactor y el motor de arranque deja pasar poca corriente.
# en: 11fd140d
fault-carburettor-blocked = Chiclé del carburador atascado o boya pegada
# en: c6f74b69
fault-carburettor-blocked-explain = La goma o la suciedad no dejan salir la gasolina del carburador; arranca con lo poco que le llega y se para.
# en: e88207cf
fault-intake-air-leak = Entra aire entre el carburador y el motor
# en: 0f226928
fault-intake-air-leak-explain = El aire que entra después del carburador deja la mezcla demasiado pobre para arrancar.
# en: af4f2eff
fault-charging-failed = La batería no se carga
# en: 24688edf
fault-charging-failed-explain = El motor no recarga la batería, y esta se vacía trabajando.
# en: fc4cb8ec
fault-belt-slack = Correa del alternador floja, rota o salida
# en: 55875d96
fault-belt-slack-explain = La correa ya no mueve el alternador y la batería no se recarga.
# en: 04f4740f
fault-overcharge = La batería se sobrecarga
# en: 0f277195
fault-overcharge-explain = El regulador deja pasar demasiados voltios y cuece la batería hasta secarla.
# en: 20a9dd50
fault-choke-wrong = Estárter o acelerador mal puestos para arrancar
# en: 62d21d69
fault-choke-wrong-explain = Sin estárter, al motor frío le llega poca gasolina; con estárter, al caliente le llega demasiada.
# en: bf9b8d5e
fault-choke-stuck = Mando del estárter o del acelerador roto o agarrotado
# en: 67562926
fault-choke-stuck-explain = La palanca se mueve, pero la mariposa del carburador no la sigue.
# en: 23d763bf
fault-minus-clamp-corroded = Terminal negativo sulfatado o flojo
# en: 97e5d753
fault-minus-clamp-corroded-explain = La unión con el borne negativo deja pasar poca corriente.
# en: 407421ac
fault-valve-leaks = Válvula pegada, quemada o mal reglada
# en: fd2ad1fd
fault-valve-leaks-explain = Una válvula que no cierra deja escapar la presión del cilindro.
# en: 38068eb9
fault-head-gasket-blown = Junta de culata quemada
# en: 36bc5621
fault-head-gasket-blown-explain = Entre culata y bloque se escapa la presión al agua, al aceite, al cilindro de al lado o afuera.
# en: 20eb58b8
fault-rings-worn = Segmentos o cilindro gastados
# en: 1c7acecd
fault-rings-worn-explain = Los segmentos gastados dejan pasar la presión, y el motor frío no arranca.
# en: f704ea9a
fault-timing-slipped = Distribución o bomba fuera de punto
# en: c7084c31
fault-timing-slipped-explain = Una correa, cadena, engranaje o el arrastre de la bomba se ha corrido o quedó mal puesto, y todo llega a destiempo.
# en: 8f12ca7f
fault-pto-switch-failed = Interruptor de la toma de fuerza, o su varilla, estropeado
# en: b1dfc63a
fault-pto-switch-failed-explain = El interruptor de la toma de fuerza no avisa de que está quitada, y el circuito de arranque sigue abierto.
# en: c8275465
fault-pto-left-engaged = Toma de fuerza o cuchillas dejadas puestas
# en: 17f4d2ad
fault-pto-left-engaged-explain = La palanca de la toma de fuerza o de las cuchillas no está quitada del todo, y el seguro de arranque hace bien en no dejar arrancar.
# en: daae4834
fault-gear-left-engaged = Marcha o palanca de avance fuera de punto muerto
# en: b974a022
fault-gear-left-engaged-explain = Una palanca de cambio o de avance no está en punto muerto, y el seguro de arranque hace bien en no dejar arrancar.
# en: 03cc3572
fault-seat-empty = Nadie en el asiento, o poco peso
# en: dbdfc095
fault-seat-empty-explain = El interruptor del asiento no nota a nadie, y el seguro de arranque hace bien en no dejar arrancar.
# en: f97b2d2f
fault-clutch-not-pressed = Embrague sin pisar a fondo
# en: 3a61f4f9
fault-clutch-not-pressed-explain = El pedal del embrague no está pisado a fondo, y el seguro de arranque hace bien en no dejar arrancar.
# en: 0c3aa333
fault-brake-not-pressed = Freno sin pisar a fondo
# en: 9191a0de
fault-brake-not-pressed-explain = El pedal del freno no está pisado a fondo, y el seguro de arranque hace bien en no dejar arrancar.
# en: 614cd65a
fault-stop-button-pressed = Parada de emergencia dejada apretada
# en: 4450f0d7
fault-stop-button-pressed-explain = Hay una seta de emergencia todavía metida, y no puede arrancar nada.
# en: f0e75f7b
fault-bar-not-down = Barra de seguridad sin bajar del todo
# en: 9be48fd1
fault-bar-not-down-explain = La barra de seguridad no está bajada del todo, y el seguro de arranque hace bien en no dejar arrancar.
# en: 5f905f0c
fault-operator-lever-released = Palanca de hombre muerto sin sujetar
# en: 9598ef45
fault-operator-lever-released-explain = La palanca del manillar no está sujeta, y el freno del motor quita la chispa.
# en: f678d954
fault-isolator-left-off = Cortacorrientes dejado quitado
# en: 99b2fad8
fault-isolator-left-off-explain = El cortacorrientes de la batería está quitado, y la máquina no tiene corriente.
# en: 6464bb04
fault-decompressor-failed = Descompresor automático estropeado
# en: 1dc00dbf
fault-decompressor-failed-explain = El motor se para en la primera compresión porque no se le quita presión.
# en: 37b1f284
fault-valve-gap-wide = Válvulas con demasiada holgura, el descompresor no hace nada
# en: b6721bdd
fault-valve-gap-wide-explain = Con demasiada holgura, el descompresor ya no levanta la válvula y el motor se para en la compresión.
# en: bec8047a
fault-diesel-waxed = Gasoil helado (parafina)
# en: cd96cd04
fault-diesel-waxed-explain = Con la helada, la parafina del gasoil de verano atasca el filtro y los tubos.
# en: 7381089e
fault-diesel-ice = Agua del gasoil helada
# en: 036a3862
fault-diesel-ice-explain = El agua de la salida del depósito, del tubo o del decantador se ha helado y no deja pasar el gasoil.
# en: c34e444c
fault-diesel-air = Aire en el gasoil
# en: 087dfb7c
fault-diesel-air-explain = El aire de los tubos no deja que la bomba inyectora coja presión.
# en: 28f2c397
fault-diesel-water = Agua o bichos en el gasoil
# en: b643a39a
fault-diesel-water-explain = Hay agua o babas en el filtro y el depósito, y llegan a la bomba.
# en: 7dc9514e
fault-diesel-filter-blocked = Filtro de gasoil, rejilla o tubo atascado
# en: 7b10b4f7
fault-diesel-filter-blocked-explain = Pasa poco gasoil por el filtro, la rejilla del depósito o un tubo.
# en: abe386c2
fault-lift-pump-weak = La bomba de alimentación no da gasoil
# en: 0da16144
fault-lift-pump-weak-explain = La bomba que sube el gasoil del depósito da poco.
# en: bbc6dbf6
fault-immobiliser-lock = Bloqueada por el inmovilizador, el PIN o a distancia
# en: 91e7f59f
fault-immobiliser-lock-explain = La máquina no conoce la llave, pide su PIN o la han bloqueado a distancia.
# en: a168601e
fault-exhaust-fluid-lock = Bloqueada por falta de AdBlue o por el filtro sucio
# en: ec980119
fault-exhaust-fluid-lock-explain = La centralita prohíbe arrancar porque falta AdBlue, está malo o ha fallado su sistema.
# en: c08095a2
fault-controller-no-supply = A la centralita no le llega corriente
# en: 66bab1ea
fault-controller-no-supply-explain = Falla el fusible, el relé, la masa o el conector de la centralita del motor, y nadie le manda funcionar.
# en: b8168582
fault-controller-refuses = La centralita no deja, por un interruptor o un sensor
# en: b4576273
fault-controller-refuses-explain = Un interruptor, un sensor o su conector le dice a la centralita algo que no es verdad, y ella no deja girar el motor de arranque.
# en: e507f1f2
fault-controller-damaged = Centralita estropeada
# en: 537c2e34
fault-controller-damaged-explain = Una soldadura, unas pinzas mal puestas o el agua han destrozado la centralita del motor.
# en: e7937eb5
fault-engine-seized = Motor gripado
# en: 80a16149
fault-engine-seized-explain = El propio motor está agarrotado, y el motor de arranque no puede moverlo.
# en: 2f721635
fault-hydrolock = Líquido en un cilindro
# en: 74ec6070
fault-hydrolock-explain = Un cilindro se ha llenado de aceite, gasolina o agua y el pistón no pasa. No lo fuerce.
# en: 6981689d
fault-thick-oil = Aceite demasiado espeso para el frío
# en: 68e6ba67
fault-thick-oil-explain = El aceite frío y espeso frena el motor más de lo que puede mover el motor de arranque.
# en: e05ca317
fault-load-left-engaged = Algo gira a la vez que el motor
# en: e8aa0214
fault-load-left-engaged-explain = Una bomba, un apero o una transmisión no está desconectada y hay que moverla también.
# en: 428769f5
fault-pto-clutch-stuck = El embrague de la toma de fuerza o de las cuchillas no suelta
# en: 6c28d279
fault-pto-clutch-stuck-explain = Aunque está quitado, el embrague arrastra las cuchillas o la toma de fuerza, y el motor de arranque no puede con todo.
# en: 2d7a9c7a
fault-accessory-seized = Alternador, bomba de agua o compresor agarrotado
# en: bcb6251d
fault-accessory-seized-explain = Algo que mueve la correa está agarrotado y frena el motor; la correa patina, echa humo o lo para.
# en: 10ed77be
fault-hydraulic-drag = Aceite hidráulico demasiado espeso por el frío
# en: 1d38295e
fault-hydraulic-drag-explain = La bomba hidráulica gira a la vez, y con la helada su aceite está tan espeso que el motor de arranque no puede con las dos cosas.
# en: 4d5c8bbc
fault-carburettor-overflows = El carburador rebosa (boya o aguja)
# en: 8fd6c2f1
fault-carburettor-overflows-explain = Una boya picada o una aguja que no cierra dejan pasar la gasolina al motor.
# en: d6b5b57c
fault-flooded = Motor ahogado por mucho estárter o mucho dar al arranque
# en: eb0c03f1
fault-flooded-explain = Hay demasiada gasolina en el cilindro y ha mojado la bujía.
# en: 1418fe1b
fault-tank-empty = Depósito vacío
# en: 14667855
fault-tank-empty-explain = No queda combustible para que el motor lo coja.
# en: a6ebe166
fault-tank-leaks = Fuga en el depósito o en un tubo, depósito vacío
# en: 57a6cb8b
fault-tank-leaks-explain = El combustible se ha salido por una fuga en el depósito, la llave de paso o un tubo. Con llenar no se arregla.
# en: ba080a08
fault-fuel-tap-shut = Llave de paso cerrada
# en: a2d7fb98
fault-fuel-tap-shut-explain = La llave de paso está cerrada o a medias, y no pasa combustible.
# en: ec158d6a
fault-tank-vent-blocked = Respiradero del depósito atascado
# en: 6760dac6
fault-tank-vent-blocked-explain = No entra aire en el depósito, y el vacío no deja salir el combustible.
# en: 26ce8cc9
fault-wrong-fuel = Líquido equivocado en el depósito
# en: c1e4cf2f
fault-wrong-fuel-explain = Hay diésel en la gasolina, gasolina en el gasoil, agua o AdBlue en el depósito. No se le puede dar al arranque.
# en: 83b3ea65
fault-fuel-valve-dead = Electroválvula del carburador pegada o quemada
# en: 72e709e7
fault-fuel-valve-dead-explain = La válvula que abre el chiclé al dar el contacto no abre.
# en: 44df9b18
fault-fuel-valve-no-current = A la electroválvula del carburador no le llega corriente
# en: 8f519905
fault-fuel-valve-no-current-explain = El cable, el conector, el fusible o el contacto ya no alimentan la válvula que abre el chiclé.
# en: 3f0c646b
fault-fuse-blown = Fusible principal fundido
# en: f9ea2885
fault-fuse-blown-explain = Se ha fundido el fusible principal: ni la llave ni los interruptores tienen corriente. Algo lo ha fundido.
# en: 968253ac
fault-wire-shorted = Cable pelado contra el metal, el fusible se vuelve a fundir
# en: 99de7ba2
fault-wire-shorted-explain = Un cable pelado toca metal después del fusible, y cada fusible nuevo se funde también.
# en: be6af7cb
fault-fuse-holder-corroded = Portafusibles sulfatado o con polvo
# en: 862facc3
fault-fuse-holder-corroded-explain = El fusible está entero, pero sus contactos están sucios o quemados y pierden la corriente.
# en: f0bf2bb8
fault-gas-empty = Gas acabado
# en: 97fa4176
fault-gas-empty-explain = La botella o el depósito está vacío.
# en: 8d536cca
fault-gas-valve-shut = Llave del gas cerrada
# en: e6486959
fault-gas-valve-shut-explain = La botella o una llave está cerrada, o ha saltado la válvula de exceso de caudal de la botella.
# en: c79de904
fault-gas-regulator-failed = Regulador del gas helado o estropeado
# en: b823b841
fault-gas-regulator-failed-explain = El regulador da poco gas porque está helado, con aceite o con la membrana rota.
# en: 74619050
fault-gas-lock-shut = La válvula de corte del gas no abre
# en: caf71ac7
fault-gas-lock-shut-explain = La válvula eléctrica o de vacío que deja pasar el gas se queda cerrada.
# en: 7bd0ba99
fault-points-burnt = Platinos quemados, sucios o cerrados
# en: 1dd86525
fault-points-burnt-explain = Los platinos ya no abren o no hacen buen contacto, y la chispa es floja o no la hay.
# en: 4e67c8e9
fault-distributor-fault = Tapa o pipa del distribuidor (delco)
# en: 3f5c7a55
fault-distributor-fault-explain = La chispa se pierde en el distribuidor, entre la bobina y los cables de bujía.
# en: 7398fac4
fault-magneto-weak = Magneto floja o con el acoplamiento de impulso pegado
# en: 30c70850
fault-magneto-weak-explain = A la velocidad de arranque la magneto da una chispa floja, o el acoplamiento ya no salta.
# en: 9afb87b7
fault-coil-failed = Bobina o módulo de encendido estropeado
# en: 0a9d6a8a
fault-coil-failed-explain = La bobina o su módulo no da chispa.
# en: 8f0fb082
fault-kill-wire-earthed = El cable de paro toca masa
# en: eeedd843
fault-kill-wire-earthed-explain = El cable que para el motor toca masa, o la llave lo deja ahí, y la bobina no puede dar chispa.
# en: 8239da7e
fault-run-interlock-kills = Un interruptor de seguridad quita la chispa
# en: 8d341527
fault-run-interlock-kills-explain = El interruptor del asiento, de las cuchillas o del freno le dice al encendido que no hay nadie, y este para el motor.
# en: fd9226d7
fault-engine-switch-off = El interruptor del propio motor está en OFF
# en: fb5d8daf
fault-engine-switch-off-explain = Un interruptor del motor o del manillar sigue en OFF, y no hay chispa.
# en: 705e2c41
fault-coil-no-feed = A la bobina no le llega corriente
# en: 4042fa4c
fault-coil-no-feed-explain = La llave, un cable, la resistencia o un fusible ya no alimentan la bobina de encendido.
# en: 0a879c6a
fault-flywheel-key-sheared = Chaveta del volante cortada
# en: 4e5240fb
fault-flywheel-key-sheared-explain = De un golpe, el volante se ha girado en el cigüeñal y la chispa llega a destiempo.
# en: b4b85e69
fault-leads-crossed = Cables de bujía cruzados o encendido mal puesto a punto
# en: 8fdd4a60
fault-leads-crossed-explain = Después de tocarlo, las chispas llegan en otro orden o a destiempo.
# en: 14159d93
fault-plug-fouled = Bujía engrasada o gastada
# en: c608850c
fault-plug-fouled-explain = La bujía ya no da una chispa bastante fuerte con la presión.
# en: bead7f36
fault-plug-lead-off = Cable de bujía suelto, flojo o rajado
# en: d21414ea
fault-plug-lead-off-explain = El cable no asienta en la bujía, o la chispa salta por fuera.
# en: a3eb4889
fault-coil-fails-hot = La bobina falla en caliente
# en: eed48e61
fault-coil-fails-hot-explain = En cuanto se calienta, la bobina no da chispa; fría vuelve a ir.
# en: 95849a15
fault-injection-pump-failed = Bomba inyectora gastada o estropeada
# en: b940e87b
fault-injection-pump-failed-explain = A la bomba inyectora le llega gasoil, pero no lo manda a los inyectores.
# en: f7f7ea3c
fault-injectors-worn = Inyectores gastados o pegados
# en: df706d64
fault-injectors-worn-explain = Los inyectores gotean o pulverizan mal, y el gasoil no prende.
# en: c7488963
fault-injector-seats-leak = Entra gas al gasoil por los inyectores
# en: 45e2ffd3
fault-injector-seats-leak-explain = El gas de la combustión pasa por los asientos gastados de los inyectores al retorno y llena el gasoil de burbujas.
# en: e28c1382
fault-rail-pressure-missing = No sube la presión del raíl
# en: cde5d431
fault-rail-pressure-missing-explain = La bomba de alta, la válvula reguladora, el sensor de presión o un inyector que pierde dejan el raíl sin presión para inyectar.
# en: cd9a8886
fault-speed-sensor-failed = Sensor de giro del cigüeñal o del árbol de levas
# en: 2b4190ad
fault-speed-sensor-failed-explain = Sin la señal de giro, la centralita no inyecta.
# en: 5dc79c14
fault-neutral-switch-failed = Interruptor de punto muerto, o su varilla, estropeado
# en: ed432067
fault-neutral-switch-failed-explain = El interruptor de punto muerto no avisa del punto muerto, y el circuito de arranque sigue abierto.
# en: bda0771f
fault-seat-switch-failed = Interruptor del asiento, o su varilla, estropeado
# en: 6860e96f
fault-seat-switch-failed-explain = El interruptor del asiento no avisa de que hay alguien, y el circuito de arranque sigue abierto.
# en: 3024d001
fault-clutch-switch-failed = Interruptor del embrague, o su varilla, estropeado
# en: 71ba963a
fault-clutch-switch-failed-explain = El interruptor del embrague no avisa del pedal, y el circuito de arranque sigue abierto.
# en: 6114a607
fault-brake-switch-failed = Interruptor del freno, o su varilla, estropeado
# en: db9852ec
fault-brake-switch-failed-explain = El interruptor del freno no avisa del pedal, y el circuito de arranque sigue abierto.
# en: 08e3ef77
fault-interlock-wire-off = Conector o cable de un interruptor de seguridad suelto
# en: 99ae3c63
fault-interlock-wire-off-explain = El conector de un interruptor de seguridad está suelto, o su cable roído o arrancado, y el circuito de arranque sigue abierto.
# en: 69be91d9
fault-interlock-mud = El barro o la hierba sujetan un interruptor o un pedal
# en: 695f8cf0
fault-interlock-mud-explain = El barro o la hierba apretados no dejan que un pedal, una palanca o su interruptor llegue a la posición de arranque.
# en: e350e7ac
fault-key-run-contact = Mal contacto de la llave en ON, se para al soltarla
# en: 9cab58eb
fault-key-run-contact-explain = En ON la llave ya no alimenta el encendido, la electroválvula o el solenoide de paro, y el motor se para cuando la llave vuelve.
# en: a6d432e0
fault-key-switch-supply = La llave de contacto no da nada de corriente
# en: f48eb4ed
fault-key-switch-supply-explain = A la llave de contacto le llega corriente, pero no la deja pasar en ninguna posición.
# en: dd79c6ca
fault-key-plug-burnt = Conector o cables de la llave quemados o flojos
# en: 6ff17a59
fault-key-plug-burnt-explain = El conector de detrás de la llave está quemado, verde o flojo, y a la llave le llega o le sale mal la corriente.
# en: b39d5fd0
fault-key-switch-start-contact = Mal contacto de la llave en START
# en: 4527c3ac
fault-key-switch-start-contact-explain = En START la llave no da corriente al circuito de arranque.
# en: 5387795d
fault-key-stuck-on-start = La llave se queda en START
# en: e4cf1e79
fault-key-stuck-on-start-explain = La llave no vuelve de START, y el motor de arranque sigue girando con el motor.
# en: c2969ed1
fault-stale-fuel = Gasolina demasiado vieja
# en: 841e0314
fault-stale-fuel-explain = La gasolina vieja ya no se evapora bastante para arrancar, y engoma los chiclés.
# en: 69718ed5
fault-water-in-petrol = Agua o suciedad en la gasolina
# en: f38db530
fault-water-in-petrol-explain = Hay agua o suciedad en la cuba o el depósito, y al chiclé le llega eso en vez de gasolina.
# en: 15856045
fault-petrol-filter-blocked = Filtro de gasolina, rejilla o tubo atascado
# en: 7c002aae
fault-petrol-filter-blocked-explain = El filtro, la rejilla del depósito o un tubo hinchado por dentro deja pasar poca gasolina.
# en: af49037b
fault-petrol-pump-failed = La bomba de gasolina no da
# en: b3888874
fault-petrol-pump-failed-explain = Ha fallado la bomba, su tubo de impulsos o su corriente, y el carburador se queda seco.
# en: 40e65bcf
fault-vapour-lock = La gasolina hierve en el tubo caliente
# en: 84abf82d
fault-vapour-lock-explain = Cerca del motor caliente la gasolina se vuelve burbujas, y al carburador no le llega líquido.
# en: f060c8a8
fault-petrol-injection-fault = La inyección de gasolina no da
# en: 1c1477f6
fault-petrol-injection-fault-explain = Falla la bomba del depósito, la presión o un inyector de la inyección de gasolina.
# en: 967f6860
fault-glow-plugs-failed = Uno o más calentadores fundidos
# en: bb126b20
fault-glow-plugs-failed-explain = Algún cilindro no se calienta, y el motor frío gira sin arrancar o arranca a trompicones.
# en: 9b4f45b7
fault-glow-relay-failed = Relé, temporizador, fusible o pletina de los calentadores
# en: d70ab1c9
fault-glow-relay-failed-explain = A los calentadores no les llega corriente, y el motor frío no se calienta.
# en: ca49330d
fault-preheat-too-short = Sin precalentar, o poco tiempo
# en: 98115609
fault-preheat-too-short-explain = Se le dio al arranque antes de que los calentadores estuvieran calientes.
# en: db271f24
fault-hoses-wrong = Tubos de combustible cambiados o doblados, o filtro al revés
# en: 53b34bf2
fault-hoses-wrong-explain = Desde el último arreglo, ida y retorno están cambiados, un tubo está doblado o un filtro va al revés.
# en: a328ed15
fault-start-relay-failed = Relé de arranque estropeado
# en: b195782e
fault-start-relay-failed-explain = El relé entre el circuito de la llave y el solenoide no pasa la orden de arranque.
# en: 3acda645
fault-solenoid-coil-open = Bobina del solenoide o del contactor cortada
# en: 5d9da328
fault-solenoid-coil-open-explain = El bobinado que junta los contactos está cortado.
# en: e5bc9ed2
fault-solenoid-pull-in-open = Bobinado de llamada del solenoide cortado
# en: 52683c62
fault-solenoid-pull-in-open-explain = Uno de los dos bobinados del solenoide está cortado; el núcleo solo da un tirón.
# en: f526d25f
fault-solenoid-hold-in-open = Bobinado de retención del solenoide cortado
# en: d849afde
fault-solenoid-hold-in-open-explain = El solenoide entra pero no se aguanta dentro, y castañetea con la batería buena.
# en: 6136a7a8
fault-solenoid-contacts-burnt = Contactos del solenoide quemados
# en: 3cb07dee
fault-solenoid-contacts-burnt-explain = El solenoide hace clac, pero sus contactos dejan pasar poca corriente al motor de arranque.
# en: bc6e8528
fault-solenoid-sticking = Núcleo del solenoide agarrotado
# en: bbad360d
fault-solenoid-sticking-explain = La bobina tira, pero el núcleo va duro y no junta los contactos.
# en: 65c65b85
fault-solenoid-wont-release = El solenoide o el relé no suelta
# en: 203dcda8
fault-solenoid-wont-release-explain = Los contactos se han pegado, y el motor de arranque sigue girando aunque la llave haya vuelto.
# en: fb368556
fault-oil-low-stop = Parado por el protector de aceite bajo
# en: ac338ef6
fault-oil-low-stop-explain = El protector para el motor porque falta aceite o la máquina está inclinada.
# en: 248aa2a8
fault-oil-switch-faulty = Interruptor de aceite bajo, o su cable, estropeado
# en: 3be4240b
fault-oil-switch-faulty-explain = El protector para el motor aunque hay aceite de sobra.
# en: 15ac1172
fault-tilt-stop = Parado por el protector de vuelco
# en: fdf7b347
fault-tilt-stop-explain = La máquina estuvo tumbada o está inclinada, y el protector de vuelco no deja funcionar el motor.
# en: 42a5a3ff
fault-parasitic-draw = Algo se queda encendido mientras está parada
# en: 2b5fd920
fault-parasitic-draw-explain = Algo se queda encendido y vacía la batería mientras la máquina está parada.
# en: 9dab19a6
fault-alternator-draw = El alternador o el regulador consume parado
# en: 9f6775bd
fault-alternator-draw-explain = Un diodo, el disyuntor o el regulador deja volver corriente por el alternador mientras la máquina está parada.
# en: cb574121
fault-bare-wire-draw = Un cable roído o pelado vacía la batería
# en: f5e35a75
fault-bare-wire-draw-explain = Dos cables pelados se tocan y dejan pasar corriente aunque la llave esté quitada.
# en: 0c4ae0ac
fault-start-wire-broken = Cable del circuito de arranque cortado
# en: 5e5e0b1a
fault-start-wire-broken-explain = El cable entre los seguros y el solenoide o el relé está cortado.
# en: faa9dc42
fault-solenoid-wire-broken = Cable del relé al solenoide cortado
# en: d6ce33fd
fault-solenoid-wire-broken-explain = El relé funciona, pero el cable al solenoide, o su enchufe, está suelto o cortado.
# en: 725fed41
fault-start-circuit-resistance = Conectores sulfatados en el circuito de arranque
# en: 7bee8b64
fault-start-circuit-resistance-explain = Los conectores verdes y los contactos cansados dejan al solenoide sin voltios para entrar.
# en: 459724e2
fault-dash-feed-broken = Conector o cable que alimenta el cuadro en mal estado
# en: 83b0fc21
fault-dash-feed-broken-explain = Un conector sulfatado o un cable cortado antes o después de la llave deja todo el cuadro sin corriente.
# en: 44d786b8
fault-wired-wrong = Cables mal puestos después de un arreglo
# en: 1ee28e79
fault-wired-wrong-explain = Desde el último arreglo hay un cable en otro borne, o se quedó sin poner.
# en: 443a3846
fault-drive-not-engaging = El bendix no engrana
# en: d02ac7cb
fault-drive-not-engaging-explain = El motor de arranque gira, pero su piñón no mueve el motor.
# en: f8a97e07
fault-ring-gear-teeth = Dientes de la corona gastados o rotos
# en: 61fd6ce7
fault-ring-gear-teeth-explain = Donde el motor suele pararse, los dientes están comidos y el piñón rasca.
# en: 59ad50bc
fault-starter-brushes-worn = Escobillas del motor de arranque gastadas
# en: d3dc4ceb
fault-starter-brushes-worn-explain = Las escobillas ya no aprietan en el colector, y al motor de arranque no le llega corriente.
# en: 1546a699
fault-starter-armature-fault = Bobinado del motor de arranque estropeado
# en: 6e962323
fault-starter-armature-fault-explain = Un bobinado del motor de arranque está cortado o en corto.
# en: 2f6a8d81
fault-starter-dragging = El motor de arranque roza
# en: 927d258f
fault-starter-dragging-explain = El motor de arranque roza por dentro y se come la corriente con la que tendría que mover el motor.
# en: 1798147a
fault-starter-jammed = Motor de arranque trabado en la corona
# en: d665aeac
fault-starter-jammed-explain = El piñón se ha quedado clavado en la corona, o el motor de arranque está bloqueado.
# en: 916d824e
fault-stop-solenoid-dead = Solenoide de paro, o su varilla, agarrotado
# en: b2c54418
fault-stop-solenoid-dead-explain = El solenoide que deja pasar el gasoil no se mueve, y la bomba se queda en paro.
# en: 2c9c10dd
fault-stop-solenoid-no-feed = Al solenoide de paro le llega mal la corriente (fusible, relé, cable)
# en: eb80bcbd
fault-stop-solenoid-no-feed-explain = El fusible, el relé, el temporizador o el cable no alimentan bien el solenoide de paro, y la bomba se queda en paro.
# en: 5328008d
fault-stop-knob-out = Tirador de paro dejado fuera
# en: 348d0ed2
fault-stop-knob-out-explain = El tirador de paro todavía tiene la bomba en paro.
# en: 2ed747da
fault-stop-cable-stuck = Cable de paro roto, o palanca pegada en paro
# en: 2a932666
fault-stop-cable-stuck-explain = El tirador está metido, pero el cable o la palanca de la bomba no lo sigue.
# en: 8fb44abe
fault-battery-link-bad = Puente entre las baterías en mal estado
# en: d1ac6af1
fault-battery-link-bad-explain = El cable que une las dos baterías hace mal contacto.
# en: 2c221e95
fault-one-battery-weak = Una de las dos baterías está mala
# en: 0d08c54c
fault-one-battery-weak-explain = Una de las dos baterías ha fallado y tira abajo de la buena.
# en: 36f2a611
fault-isolator-failed = Contactos del cortacorrientes en mal estado
# en: 87b4e88c
fault-isolator-failed-explain = El cortacorrientes está puesto, pero sus contactos ya no dejan pasar la corriente.
# en: f7d8a6c0
fault-lithium-shut-off = La batería de litio se ha cortado sola
# en: aea4a6e1
fault-lithium-shut-off-explain = El protector de dentro de la batería de litio la ha cortado, porque está vacía o demasiado fría.
