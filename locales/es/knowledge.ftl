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
fault-pto-switch-failed-explain = El interruptor de la toma de fuerza no avisa de que está desconectada, y el circuito de arranque sigue abierto.
# en: c8275465
fault-pto-left-engaged = Toma de fuerza o cuchillas dejadas conectadas
# en: 17f4d2ad
fault-pto-left-engaged-explain = La palanca de la toma de fuerza o de las cuchillas no está desconectada del todo, y el seguro de arranque hace bien en no dejar arrancar.
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
fault-isolator-left-off = Cortacorrientes dejado desconectado
# en: 99b2fad8
fault-isolator-left-off-explain = El cortacorrientes de la batería está desconectado, y la máquina no tiene corriente.
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
fault-exhaust-fluid-lock = Bloqueada por falta de urea o por el filtro sucio
# en: ec980119
fault-exhaust-fluid-lock-explain = La centralita prohíbe arrancar porque falta urea, está en mal estado o ha fallado su sistema.
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
fault-pto-clutch-stuck-explain = Aunque está desconectado, el embrague arrastra las cuchillas o la toma de fuerza, y el motor de arranque no puede con todo.
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
fault-wrong-fuel-explain = Hay diésel en la gasolina, gasolina en el gasoil, agua o urea en el depósito. No se le puede dar al arranque.
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
# en: 94875171
fault-lever-switch-kills = Cable o interruptor de paro de la palanca de hombre muerto
# en: c12b2212
fault-lever-switch-kills-explain = La palanca está sujeta, pero su cable o el interruptor de paro del motor sigue quitando la chispa.
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
fault-isolator-failed-explain = El cortacorrientes está conectado, pero sus contactos ya no dejan pasar la corriente.
# en: f7d8a6c0
fault-lithium-shut-off = La batería de litio se ha cortado sola
# en: aea4a6e1
fault-lithium-shut-off-explain = El protector de dentro de la batería de litio la ha cortado, porque está vacía o demasiado fría.

## Observaciones y sus estados

# en: 749e28ee
observation-air-filter-look = Aspecto del filtro del aire
# en: 5137c876
state-air-filter-look-clean = Limpio
# en: 58752b75
state-air-filter-look-dirty = Sucio
# en: 0c067ba8
state-air-filter-look-blocked = Atascado, mojado o roído
# en: b2ea4397
observation-exhaust-look = Salida del escape
# en: ed077f3d
state-exhaust-look-open = Libre
# en: a35f345e
state-exhaust-look-blocked = Nido, barro, doblado o aplastado
# en: d0a1fa4f
observation-contactor-out-volts = Voltios en el espárrago de salida del contactor, START
# en: d5a98cdb
state-contactor-out-volts-none = Menos de 1 V
# en: 71bfd148
state-contactor-out-volts-low = De 1 a 8 V
# en: e696f5f4
state-contactor-out-volts-good = Más de 8 V
# en: 98da5707
observation-cable-to-earth = Ohmios del cable positivo a masa, batería suelta
# en: 11c41373
state-cable-to-earth-short = Menos de 1 ohmio
# en: 59811502
state-cable-to-earth-load = De 1 a 200 ohmios
# en: a16da569
state-cable-to-earth-open = Más de 200 ohmios
# en: 722f4fc6
observation-spark-at-clamp = Chispa al poner el último cable de la batería
# en: d7a7cad1
state-spark-at-clamp-none = Ninguna o muy pequeña
# en: 4312a2b8
state-spark-at-clamp-big = Grande cada vez
# en: bd9008aa
state-spark-at-clamp-not-seen = No se vio
# en: eaec755e
observation-intake-joint = Unión entre el carburador y el motor
# en: ce0cc841
state-intake-joint-tight = Bien cerrada
# en: d41ca0f8
state-intake-joint-loose = Floja, rota o rajada
# en: c0c72f5c
observation-charge-lamp = Testigo de carga o de batería en marcha
# en: 9045ae3c
state-charge-lamp-goes-out = Se apaga como debe
# en: b3691b6f
state-charge-lamp-stays-on = Se queda encendido o parpadea
# en: 062115cf
state-charge-lamp-never-lights = No se enciende nunca
# en: 8958b5af
state-charge-lamp-not-known = No tiene
# en: 263f1922
observation-alternator-belt = Correa del alternador
# en: d8eb1de9
state-alternator-belt-sound = Buena y tensa
# en: 17bd97a4
state-alternator-belt-slack = Floja o cristalizada
# en: 5557d77c
state-alternator-belt-gone = Rota o salida
# en: cfd565c8
observation-charging-volts = Voltios de la batería con el motor en marcha
# en: 7cac3d39
state-charging-volts-none = Menos de 13 V
# en: f4d0c246
state-charging-volts-low = De 13 a 13,7 V
# en: 0f2a591a
state-charging-volts-good = De 13,7 a 15 V
# en: 97081356
state-charging-volts-cold-only = De 15 a 15,3 V
# en: a751c5f4
state-charging-volts-high = Más de 15,3 V
# en: cb509692
observation-choke-flap = Mariposa del estárter al mover la palanca
# en: c78d2a79
state-choke-flap-moves = Abre y cierra bien
# en: 9e96220e
state-choke-flap-stays-open = No cierra
# en: e9cb45b3
state-choke-flap-stays-shut = No abre
# en: 1442f5a2
observation-joint-look = Aspecto de los terminales y puntas de cable
# en: c005bc7f
state-joint-look-clean = Limpios y apretados
# en: bb29be0a
state-joint-look-corroded = Pelusa blanca o verde
# en: ee3dcd04
state-joint-look-loose = Se mueven con la mano
# en: ada20b12
state-joint-look-hot = Calientes o chamuscados
# en: 38bdf820
observation-controls-set = Mandos como para arrancar
# en: c57c0d19
state-controls-set-right = Todos como para arrancar
# en: 8be617eb
state-controls-set-not-right = Hay uno que no
# en: 0cd08b1e
observation-stop-button-look = Seta de parada de emergencia
# en: 1d9e3d7f
state-stop-button-look-out = Sacada
# en: e3f8499c
state-stop-button-look-pressed = Metida
# en: ce795f35
observation-bar-look = Barra de seguridad o palanca de hombre muerto
# en: 3786a57e
state-bar-look-held = Bajada del todo o sujeta
# en: 9261b1bc
state-bar-look-released = Subida o suelta
# en: 201480be
observation-diesel-bubbles = Burbujas de aire en el purgador o en un tubo transparente
# en: 63980060
state-diesel-bubbles-none = Sin burbujas
# en: 32a9fcb8
state-diesel-bubbles-bubbles = Burbujas o espuma
# en: b0f16051
observation-hand-primer = Tacto de la bomba de mano
# en: 003717fa
state-hand-primer-firm = Se pone dura
# en: d555b88f
state-hand-primer-soft = Sigue blanda
# en: cb216329
observation-other-key = Tras un minuto sin llave, o con otra llave o PIN
# en: 3376bd93
state-other-key-not-tried = No probado
# en: b45adc23
state-other-key-works = Entonces arrancó
# en: 41f9d57c
state-other-key-no-change = Sigue igual
# en: 49c2e2bc
observation-reader-talks = Aparato de diagnosis en el conector
# en: 46b00aa1
state-reader-talks-talks = Habla con la centralita
# en: 7e49c68d
state-reader-talks-silent = No contesta
# en: 61be905b
observation-controller-feed-volts = Voltios en las patillas de alimentación de la centralita, llave en ON
# en: e5167a79
state-controller-feed-volts-none = Menos de 2 V
# en: 2f35c2b5
state-controller-feed-volts-weak = De 2 a 11 V
# en: 717dd9ae
state-controller-feed-volts-good = Más de 11 V
# en: fb3b552b
observation-turns-by-hand = Girar el motor a mano
# en: 8bc2d5eb
state-turns-by-hand-free = Gira con resistencia pareja
# en: e2d19f8a
state-turns-by-hand-stiff = Duro toda la vuelta
# en: 577c2254
state-turns-by-hand-stuck = Agarrotado
# en: 034055e4
observation-oil-look = Aceite del motor en la varilla
# en: a7248eeb
state-oil-look-normal = Normal
# en: 71980c8d
state-oil-look-overfull = De más
# en: 093f5aed
state-oil-look-milky = Lechoso
# en: 144f4d3b
state-oil-look-smells-of-fuel = Huele a combustible
# en: 31e0b2d0
state-oil-look-low = De menos
# en: ac452463
observation-cylinder-liquid = Qué sale del cilindro
# en: 67e1bca0
state-cylinder-liquid-nothing = Nada
# en: 7c623af2
state-cylinder-liquid-liquid = Aceite, gasolina o agua
# en: 04f7ac15
observation-oil-grade = Grado del aceite del motor
# en: 3b243be0
state-oil-grade-winter = 0W o 5W
# en: 2166e67c
state-oil-grade-all-year = 10W o 15W
# en: 35f65d21
state-oil-grade-summer = 20W o monogrado
# en: 3a14dccc
observation-load-off-turns = Motor con correas y acoples quitados
# en: 687b403e
state-load-off-turns-still-hard = Sigue duro de girar
# en: d6791e7c
state-load-off-turns-free-without-belt = Libre sin la correa
# en: 7d933c1e
state-load-off-turns-free-without-drive = Libre sin la toma de fuerza o la bomba
# en: 66a1329c
observation-belt-look = Correas y poleas
# en: 46124e02
state-belt-look-sound = Bien
# en: 377056a4
state-belt-look-marks = Correa quemada, brillante o que chilla
# en: d737b4c9
observation-drive-turns-along = Cuchillas o toma de fuerza al girar el motor
# en: 73d85b16
state-drive-turns-along-stands = Se quedan quietas
# en: 7f60e03d
state-drive-turns-along-turns-along = Giran también
# en: 3e2ffd59
observation-tap-position = Llave de paso
# en: 2a27c09b
state-tap-position-open = Abierta del todo
# en: a71fee95
state-tap-position-shut = Cerrada o a medias
# en: 0467be19
observation-fuel-valve-click = Clic de la electroválvula del carburador
# en: 56ee9af0
state-fuel-valve-click-clicks = Hace clic
# en: c08ebd57
state-fuel-valve-click-silent = No hace clic
# en: 1dd7d4d0
observation-fuel-valve-volts = Voltios en la electroválvula, llave en ON
# en: e5167a79
state-fuel-valve-volts-none = Menos de 2 V
# en: b1457e2c
state-fuel-valve-volts-weak = De 2 a 9 V
# en: 8b5ed47f
state-fuel-valve-volts-good = Más de 9 V
# en: 7616ab93
observation-fuse-look = Aspecto del fusible principal
# en: caba73a7
state-fuse-look-good = Entero y limpio
# en: fca0d1c6
state-fuse-look-blown = Fundido
# en: adbf26fa
state-fuse-look-loose-or-burnt = Flojo, con polvo o chamuscado
# en: e3ebaa16
state-fuse-look-not-found = No lo encuentro
# en: 7e421c38
observation-fuse-again = Qué hizo un fusible nuevo
# en: 360de032
state-fuse-again-not-tried = No se probó otro fusible
# en: d5c5ed5e
state-fuse-again-holds = Aguanta
# en: b9ffdc6e
state-fuse-again-at-once = Se funde al momento
# en: 8e76f259
state-fuse-again-later = Se funde al rato
# en: e36b728e
observation-fuse-out-volts = Voltios después del fusible principal, llave en ON
# en: e5167a79
state-fuse-out-volts-none = Menos de 2 V
# en: 20c03e54
state-fuse-out-volts-weak = De 2 a 11,5 V
# en: e6209561
state-fuse-out-volts-good = Más de 11,5 V
# en: 40b720fd
observation-gas-bottle = Botella o depósito de gas
# en: 6ad02267
state-gas-bottle-gas-left = Queda gas
# en: c6c094bc
state-gas-bottle-empty = Vacía
# en: 52d4c369
observation-gas-valve = Llave de la botella de gas
# en: ed077f3d
state-gas-valve-open = Abierta
# en: a71fee95
state-gas-valve-shut = Cerrada o a medias
# en: 26302a33
observation-gas-frost = Escarcha en el regulador
# en: 3472adb5
state-gas-frost-none = Sin escarcha
# en: bcff7d8c
state-gas-frost-frosted = Blanco de escarcha
# en: 941b1055
observation-gas-lock-click = Clic de la válvula de corte del gas
# en: 56ee9af0
state-gas-lock-click-clicks = Hace clic
# en: c08ebd57
state-gas-lock-click-silent = No hace clic
# en: 9d0e0332
observation-gas-pressure = Presión del gas después del regulador
# en: 46eba004
state-gas-pressure-right = La que dice el fabricante
# en: a8717d66
state-gas-pressure-low = Baja o ninguna
# en: bebb608a
observation-cranks-in-gear = Llave en START con una marcha metida
# en: 94eea63a
state-cranks-in-gear-stays-still = No gira
# en: 4d48607b
state-cranks-in-gear-cranks = Gira
# en: 54c5836d
observation-cranks-with-pto = Llave en START con la toma de fuerza conectada
# en: 94eea63a
state-cranks-with-pto-stays-still = No gira
# en: 4d48607b
state-cranks-with-pto-cranks = Gira
# en: 9458fe68
observation-cranks-off-seat = Llave en START sin nadie en el asiento
# en: 94eea63a
state-cranks-off-seat-stays-still = No gira
# en: 4d48607b
state-cranks-off-seat-cranks = Gira
# en: 67ffdba1
observation-cranks-clutch-up = Llave en START sin pisar el embrague
# en: 94eea63a
state-cranks-clutch-up-stays-still = No gira
# en: 4d48607b
state-cranks-clutch-up-cranks = Gira
# en: b3f0c675
observation-cranks-brake-off = Llave en START con el freno suelto
# en: 94eea63a
state-cranks-brake-off-stays-still = No gira
# en: 4d48607b
state-cranks-brake-off-cranks = Gira
# en: a8d01a42
observation-bridges-left = Puentes y conectores sueltos
# en: 7d0b2f24
state-bridges-left-none = No queda ninguno
# en: c26cfa43
state-bridges-left-found = Encontrados y quitados
# en: 6ccb9d72
observation-three-starts = Tres arranques, uno en caliente
# en: 10243133
state-three-starts-all = Los tres
# en: 5ebdf412
state-three-starts-not-all = No los tres
# en: d0bbfc89
observation-charge-after-work = Voltios de carga después del trabajo
# en: 987c9a3c
state-charge-after-work-in-band = Como deben ser
# en: 9876740d
state-charge-after-work-out = Bajos o altos
# en: 25a58883
observation-why-flat = Por qué estaba descargada la batería
# en: eba7a1f6
state-why-flat-known = Se sabe y está arreglado
# en: 117adf01
state-why-flat-unknown = No se sabe
# en: bd865883
state-why-flat-was-not = No estaba descargada
# en: d428b0f7
observation-points-look = Platinos
# en: c8cd23b3
state-points-look-sound = Limpios y abren
# en: 2dfce09a
state-points-look-bad = Quemados, sucios o no abren
# en: 33a7c8d3
observation-distributor-look = Tapa y pipa del distribuidor
# en: 5207032e
state-distributor-look-sound = Limpias y secas
# en: 3e5d7106
state-distributor-look-bad = Rajadas, oxidadas o mojadas
# en: 66c9e7ec
observation-impulse-click = Clac del acoplamiento de impulso de la magneto
# en: 0597a24d
state-impulse-click-clicks = Salta al girar
# en: 6f635a7f
state-impulse-click-silent = No salta nada
# en: f9d530d5
observation-spark-kill-wire-off = Chispa con el cable de paro quitado
# en: 43cdb159
state-spark-kill-wire-off-good = Chispa fuerte
# en: f6c39043
state-spark-kill-wire-off-weak = Chispa floja
# en: 8d678ff4
state-spark-kill-wire-off-none = Sin chispa
# en: fe38b077
observation-kill-wire-earth = Cable de paro contra masa, llave en ON
# en: dd4c7340
state-kill-wire-earth-open = No hay paso a masa
# en: e25feee6
state-kill-wire-earth-earthed = A masa se haga lo que se haga
# en: aad63a31
state-kill-wire-earth-follows-switch = Cambia con un interruptor de seguridad
# en: 8c09c598
observation-lever-at-engine = Interruptor de paro en el motor, palanca sujeta
# en: 62bafd78
state-lever-at-engine-opens = Movido del todo, interruptor abierto
# en: f93543f5
state-lever-at-engine-stays = No se mueve del todo, o sigue cerrado
# en: 46f383b6
observation-engine-switch = El interruptor del propio motor
# en: a8b727fe
state-engine-switch-run = En RUN u ON
# en: 839896b8
state-engine-switch-stop = En STOP u OFF
# en: e91faf80
state-engine-switch-no-such = No tiene
# en: c3a923a4
observation-coil-feed-volts = Voltios en la entrada de la bobina, llave en ON
# en: e5167a79
state-coil-feed-volts-none = Menos de 2 V
# en: 1a8fcef2
state-coil-feed-volts-weak = De 2 a 5 V
# en: c9c3f8e8
state-coil-feed-volts-good = Más de 5 V
# en: f1803ad9
observation-flywheel-key = Chaveta del volante
# en: fd550560
state-flywheel-key-whole = Entera
# en: 46bcb56e
state-flywheel-key-sheared = Cortada o doblada
# en: 586a4420
observation-lead-order = Orden de los cables de bujía
# en: 6901b578
state-lead-order-right = Orden y punto buenos
# en: c51e4da1
state-lead-order-wrong = Cruzados o un diente corrido
# en: 498d8024
observation-spark = Chispa en el probador
# en: 6985bc32
state-spark-good = Fuerte y seguida
# en: a8ab7be3
state-spark-weak = Floja o a ratos
# en: 8d678ff4
state-spark-none = Sin chispa
# en: c8aa327b
observation-plug-look = Aspecto de la bujía después de dar al arranque
# en: 702ec3f2
state-plug-look-dry = Seca
# en: 5690f06c
state-plug-look-wet = Mojada
# en: 3b0cda93
state-plug-look-sooty = Negra o con aceite
# en: 6a4586c1
observation-plug-cap = Pipa y cable de la bujía
# en: 5ed7626a
state-plug-cap-tight = Puesta y entera
# en: 94903b46
state-plug-cap-loose = Suelta, floja o rajada
# en: 1b8559d9
observation-spark-new-plug = Chispa con una bujía nueva
# en: 8e272739
state-spark-new-plug-good = Ahora chispa fuerte
# en: 5f64b419
state-spark-new-plug-same = No mejora
# en: be2c56a5
observation-switch-plugs-look = Interruptores de seguridad, sus conectores y cables
# en: 6c7598da
state-switch-plugs-look-sound = Todos puestos, enteros y libres
# en: a1711ddb
state-switch-plugs-look-plug-off = Un conector está suelto
# en: 27d5eae3
state-switch-plugs-look-torn = Un cable roído, roto o pelado
# en: 94665ac9
state-switch-plugs-look-mud = Tapados de barro o hierba
# en: fde63353
state-switch-plugs-look-stuck = Interruptor o palanca pegado o doblado
# en: 0dbd7de4
observation-key-feed-volts = Voltios que entran a la llave, llave en ON
# en: e5167a79
state-key-feed-volts-none = Menos de 2 V
# en: ac3d66b6
state-key-feed-volts-weak = De 2 a 11,4 V
# en: b6015789
state-key-feed-volts-good = Más de 11,4 V
# en: db181dcc
observation-key-run-volts = Voltios que salen de la llave, llave en ON
# en: e5167a79
state-key-run-volts-none = Menos de 2 V
# en: ac3d66b6
state-key-run-volts-weak = De 2 a 11,4 V
# en: b6015789
state-key-run-volts-good = Más de 11,4 V
# en: 418633f7
observation-key-start-volts = Voltios que salen de la llave, START
# en: d5a98cdb
state-key-start-volts-none = Menos de 1 V
# en: 71bfd148
state-key-start-volts-weak = De 1 a 8 V
# en: e696f5f4
state-key-start-volts-good = Más de 8 V
# en: c04c5f7e
observation-key-plug-look = Conector y cables de detrás de la llave
# en: c005bc7f
state-key-plug-look-sound = Limpios y apretados
# en: 6bdc345e
state-key-plug-look-burnt = Derretidos o quemados
# en: 2ea93154
state-key-plug-look-green = Verdes u oxidados
# en: 3cf37df8
state-key-plug-look-off = Flojos o sueltos
# en: 76650bf4
observation-key-spring = Llave soltada en START
# en: 3e3a9017
state-key-spring-springs-back = Vuelve sola
# en: f56dabe4
state-key-spring-stays = Se queda en START
# en: 1ad4b403
state-key-spring-no-key = Lleva botón o no tiene llave
# en: 2410d42a
observation-preheat-lamp = Testigo de precalentamiento
# en: f65a2bc5
state-preheat-lamp-normal = Se enciende y se apaga
# en: 0c2d72b3
state-preheat-lamp-never = No se enciende nunca
# en: 19f81761
state-preheat-lamp-stays = Se queda encendido o parpadea
# en: a081828d
observation-preheat-time = Cuánto se precalentó
# en: 78809b78
state-preheat-time-full = Como siempre o más
# en: 31b1a02c
state-preheat-time-short = Casi nada o nada
# en: 4f283d62
observation-glow-current = Corriente de los calentadores
# en: e957fc12
state-glow-current-all = La de todos los calentadores
# en: 31e0b2d0
state-glow-current-some = Poca
# en: dc937b59
state-glow-current-none = Ninguna
# en: f52be2dc
observation-glow-amps = Corriente por cada calentador
# en: 52647e19
state-glow-amps-none = Menos de 0,5 A
# en: 452668c9
state-glow-amps-some = De 0,5 a 7 A
# en: 2239a452
state-glow-amps-look-into = De 7 a 7,6 A
# en: 4f24f9af
state-glow-amps-all = Más de 7,6 A
# en: 9117c545
observation-glow-rail-volts = Voltios en la pletina de los calentadores al precalentar
# en: e5167a79
state-glow-rail-volts-none = Menos de 2 V
# en: b1457e2c
state-glow-rail-volts-weak = De 2 a 9 V
# en: 8b5ed47f
state-glow-rail-volts-good = Más de 9 V
# en: 3f3f9abb
observation-hose-run = Recorrido de los tubos de combustible
# en: 1b3ee3fc
state-hose-run-right = Bien, sin dobleces
# en: 7d003cd4
state-hose-run-wrong = Cambiados, doblados o al revés
# en: 7505d37b
observation-relay-out-volts = Voltios que salen del relé de arranque, START
# en: d5a98cdb
state-relay-out-volts-none = Menos de 1 V
# en: 71bfd148
state-relay-out-volts-weak = De 1 a 8 V
# en: e696f5f4
state-relay-out-volts-good = Más de 8 V
# en: da524e86
observation-oil-switch = Cable del interruptor de aceite contra masa, aceite bien
# en: ed077f3d
state-oil-switch-open = Abierto
# en: d242300d
state-oil-switch-earthed = A masa
# en: 62e0d0c8
observation-stands-level = Cómo está puesta la máquina
# en: 06ee3db7
state-stands-level-level = Más o menos llana
# en: 25d52f67
state-stands-level-tilted = Inclinada a las claras
# en: e15ebece
observation-lit-key-out = Algo encendido o que zumba con la llave quitada
# en: cd18b2fb
state-lit-key-out-dark = Todo apagado y callado
# en: 69edb64a
state-lit-key-out-something-on = Hay algo encendido o que zumba
# en: 38f7fdf8
observation-resting-draw = Consumo con todo apagado
# en: 814fceaf
state-resting-draw-normal = Menos de 0,035 A
# en: 46d681b7
state-resting-draw-look-into = De 0,035 a 0,1 A
# en: d7fc7396
state-resting-draw-high = Más de 0,1 A
# en: ed2328fa
observation-draw-goes-with = El consumo en parado baja al
# en: 85a01ef9
state-draw-goes-with-a-fuse = Quitar un fusible
# en: d258a2a1
state-draw-goes-with-alternator-lead = Soltar el cable del alternador
# en: c41a3045
state-draw-goes-with-neither = Ninguno de los dos
# en: b36ebcfd
observation-battery-alone = Batería cargada, una noche con el cable quitado
# en: 3376bd93
state-battery-alone-not-tried = No se ha probado
# en: 2da1f47c
state-battery-alone-holds = Los voltios se mantienen
# en: ef2d0060
state-battery-alone-falls = Los voltios bajan 0,2 V o más
# en: ede6387f
observation-wires-look = Aspecto de los cables
# en: 55bd87f4
state-wires-look-sound = No se ve nada malo
# en: 47d94a2e
state-wires-look-chewed = Roídos, rozados o pelados
# en: abcea1bf
state-wires-look-burnt = Quemados o derretidos
# en: ae788fd1
state-wires-look-green = Conectores verdes o mojados
# en: a1711ddb
state-wires-look-plug-off = Un conector está suelto
# en: 95afdc99
observation-teeth-look = Dientes del piñón y de la corona
# en: 46124e02
state-teeth-look-sound = Bien
# en: 9c579fa2
state-teeth-look-pinion-bad = Piñón gastado o agarrotado
# en: 51d2fc94
state-teeth-look-ring-bad = Corona gastada
# en: 382a6873
observation-brush-look = Escobillas y colector
# en: 08479654
state-brush-look-sound = Largas y limpias
# en: 736a6328
state-brush-look-worn = Escobillas gastadas o pegadas
# en: c39241da
state-brush-look-burnt = Colector o bobinado quemado
# en: 22fbfbbf
observation-stop-valve-click = Clic del solenoide de paro
# en: 56ee9af0
state-stop-valve-click-clicks = Hace clic
# en: c08ebd57
state-stop-valve-click-silent = No hace clic
# en: 9524546e
observation-stop-knob = Tirador de paro
# en: 66336691
state-stop-knob-in = Metido del todo
# en: a7c6f8be
state-stop-knob-out = Fuera o a medias
# en: 062b27b0
observation-stop-lever = Palanca de paro en la bomba inyectora
# en: bc3142c1
state-stop-lever-runs = En marcha
# en: 002cd1b8
state-stop-lever-stays-at-stop = Se queda en paro
# en: 6473ef74
observation-stop-solenoid-feed = Alimentación del solenoide de paro, llave en ON y START
# en: 58ede9f0
state-stop-solenoid-feed-right = Como pide la instalación
# en: fd3d897a
state-stop-solenoid-feed-wrong = Falta, floja o siempre puesta
# en: 9a7a7f7a
observation-link-drop-volts = Voltios a lo largo del puente entre baterías, START
# en: caf12bf7
state-link-drop-volts-good = Menos de 0,2 V
# en: 735c53ba
state-link-drop-volts-look-into = De 0,2 a 0,5 V
# en: df16c450
state-link-drop-volts-bad = Más de 0,5 V
# en: ff5551fe
observation-battery-difference-volts = Diferencia entre las dos baterías en reposo
# en: dac7222c
state-battery-difference-volts-even = Menos de 0,3 V
# en: 3769b130
state-battery-difference-volts-apart = Más de 0,3 V
# en: d179aade
observation-isolator-drop-volts = Voltios entre los dos lados del cortacorrientes, START
# en: 1d273080
state-isolator-drop-volts-good = Menos de 0,1 V
# en: 0240987d
state-isolator-drop-volts-look-into = De 0,1 a 0,5 V
# en: df16c450
state-isolator-drop-volts-bad = Más de 0,5 V
# en: 59b6d8cc
observation-battery-kind = Tipo de batería
# en: 5cb3c40e
state-battery-kind-lead = De plomo (la normal, pesada)
# en: 96bc38cc
state-battery-kind-lithium = De litio (pone Li o LiFePO4)
# en: 278b1b2a
observation-compression = Compresión
# en: 8f24667b
state-compression-good = Dentro del límite, pareja
# en: 8a03d5cb
state-compression-uneven = Un cilindro mucho más bajo
# en: 5dc2022a
state-compression-low = Todos por debajo del límite
# en: eb1b0d76
observation-compression-with-oil = Compresión tras echar un poco de aceite en el cilindro
# en: 36bfe41b
state-compression-with-oil-rises = Sube a las claras
# en: cd797aae
state-compression-with-oil-stays = Sigue igual
# en: 053889cb
observation-leak-down = Por dónde se va el aire en la prueba de fugas
# en: 83b0ca3f
state-leak-down-tight = Casi nada
# en: 8f48c819
state-leak-down-valves = Admisión o escape
# en: c91cac7e
state-leak-down-crankcase = Tapón del aceite
# en: c0e8ada8
state-leak-down-gasket = Agua, el cilindro de al lado o afuera
# en: 9bdce74c
observation-cranking-sound = Sonido al girar con el arranque
# en: c89dfce2
state-cranking-sound-even = Golpes parejos
# en: 27d142cf
state-cranking-sound-free = Rápido y suelto, casi sin golpes
# en: 0ac957c5
state-cranking-sound-uneven = Falta un golpe
# en: 38759dac
observation-valve-gap = Holgura de válvulas
# en: 8da9e104
state-valve-gap-right = La que dice el fabricante
# en: 9ee79f24
state-valve-gap-wrong = Mucha, poca o un balancín suelto
# en: a8825915
observation-timing-marks = Marcas de la distribución
# en: 694a9715
state-timing-marks-right = En línea
# en: 5363961c
state-timing-marks-wrong = Corridas
# en: 416d07d2
observation-compression-lowest = Compresión más baja de un diésel pequeño
# en: 19a798d2
state-compression-lowest-under = Menos de 25,5 bar
# en: 7c0bbe07
state-compression-lowest-look-into = De 25,5 a 27 bar
# en: 6c28ec75
state-compression-lowest-within = Más de 27 bar
# en: aa0b8e0a
observation-compression-spread = Diferencia de compresión entre cilindros
# en: 54b8a020
state-compression-spread-even = Menos de 2,4 bar
# en: 94acf874
state-compression-spread-look-into = De 2,4 a 3 bar
# en: 81c3313c
state-compression-spread-uneven = Más de 3 bar
# en: c033fc93
observation-display-says = Qué dice la pantalla
# en: c4b17b22
state-display-says-normal = Lo de siempre
# en: 5a2bc8b6
state-display-says-blank = Apagada o en blanco
# en: faf7d422
state-display-says-lock-sign = Dibujo de llave, candado o PIN
# en: 629f52d1
state-display-says-fluid-sign = Aviso de urea o de filtro
# en: 802ec4b0
state-display-says-set-control = Pide asiento, freno o punto muerto
# en: b9dffcfc
state-display-says-low-volts = Voltios bajos o dibujo de batería
# en: 098f25ed
state-display-says-code = Otro código o aviso
# en: 352fcde5
observation-dash-volts-start = Voltios en la pantalla al arrancar
# en: 17561cc5
state-dash-volts-start-off = Se apaga la pantalla
# en: 492b70b4
state-dash-volts-start-collapses = Menos de 7,5 V
# en: 340665ae
state-dash-volts-start-sags = De 7,5 a 9,3 V
# en: aecc2097
state-dash-volts-start-holds = De 9,3 a 11,7 V
# en: e8673011
state-dash-volts-start-no-load = Más de 11,7 V
# en: e6e2613a
observation-found-bad = Encontrado en mal estado
# en: dfcb7c16
state-found-bad-battery = Batería
# en: 1ebfdb04
state-found-bad-earth-cable = Cable de masa o su unión
# en: 3365acf6
state-found-bad-plus-cable = Cable positivo o su unión
# en: 34a7a036
state-found-bad-fuse-holder = Fusible o portafusibles
# en: 4bb64660
state-found-bad-isolator = Cortacorrientes
# en: 27723f15
state-found-bad-key-switch = Llave de contacto
# en: 53ea04d5
state-found-bad-seat-switch = Interruptor del asiento
# en: 8781541a
state-found-bad-brake-switch = Interruptor del freno
# en: c43ef872
state-found-bad-clutch-switch = Interruptor del embrague
# en: b9f0476f
state-found-bad-neutral-switch = Interruptor de punto muerto
# en: d0767e8e
state-found-bad-pto-switch = Interruptor de la toma de fuerza
# en: 26be6511
state-found-bad-safety-switch = Interruptor de seguridad o su cable
# en: f1d95962
state-found-bad-start-relay = Relé de arranque
# en: 20032501
state-found-bad-solenoid = Solenoide de arranque (automático)
# en: 3863247f
state-found-bad-starter = Motor de arranque
# en: 4f2568eb
state-found-bad-starter-drive = Bendix o corona
# en: 3f0c6d62
state-found-bad-start-wire = Cable del circuito de arranque
# en: 0c8fe205
state-found-bad-alternator = Alternador, dinamo o regulador
# en: f50bae69
state-found-bad-drain = Algo que vacía la batería
# en: 31df66dc
state-found-bad-controller = Centralita
# en: 47377eab
state-found-bad-immobiliser = Inmovilizador o código de la llave
# en: a366cc10
state-found-bad-speed-sensor = Sensor de giro
# en: d54fa6c7
state-found-bad-plug = Bujía
# en: bedfab73
state-found-bad-plug-lead = Cable o pipa de bujía
# en: a947d9f2
state-found-bad-coil = Bobina o módulo de encendido
# en: 76e5a95f
state-found-bad-coil-feed = Alimentación de la bobina
# en: bc18cad4
state-found-bad-kill-wire = Cable de paro
# en: d774ff6f
state-found-bad-magneto = Magneto
# en: e364cccf
state-found-bad-carburettor = Carburador
# en: 719d90e9
state-found-bad-float = Boya o su aguja
# en: fad6496c
state-found-bad-choke = Estárter o acelerador
# en: c57b73fc
state-found-bad-fuel-valve = Electroválvula de combustible
# en: f2f0dd02
state-found-bad-fuel-pump = Bomba de combustible
# en: 9522552b
state-found-bad-fuel-line = Tubo, filtro o depósito de combustible
# en: c6ff0ee1
state-found-bad-tank-vent = Respiradero del depósito
# en: 9875efe0
state-found-bad-injection-pump = Bomba inyectora
# en: 4cb048d2
state-found-bad-injectors = Inyectores
# en: bead63f0
state-found-bad-rail = Presión del raíl
# en: 0a6c06af
state-found-bad-stop-solenoid = Solenoide de paro o su alimentación
# en: 70ddac91
state-found-bad-glow-plugs = Calentadores
# en: bfa63b3d
state-found-bad-glow-relay = Relé o temporizador de calentadores
# en: 8e4ebe09
state-found-bad-valves = Válvulas o su mando
# en: 7dc5731c
state-found-bad-gasket = Junta de culata
# en: cfe44d6a
state-found-bad-rings = Segmentos, pistón o cilindro
# en: 410b9f47
state-found-bad-pto-clutch = Embrague de la toma de fuerza o pieza arrastrada
# en: 174f637a
observation-fuel-reaches-engine = Llega combustible al motor
# en: 85a39ab3
state-fuel-reaches-engine-yes = Llega combustible
# en: 165286e6
state-fuel-reaches-engine-weak = Llega poco combustible
# en: 1ea442a1
state-fuel-reaches-engine-no = No llega combustible
# en: a06337a5
observation-flow-stops-at = Dónde se corta el combustible
# en: bdf9823a
state-flow-stops-at-nowhere = Pasa hasta el final
# en: f3fe50ae
state-flow-stops-at-tank = Ni siquiera sale del depósito
# en: 3dbdc08f
state-flow-stops-at-filter = Llega hasta el filtro
# en: 19e4fe21
state-flow-stops-at-pump = Llega hasta la bomba
# en: ab96f79b
observation-bowl-fuel = Qué sale de la cuba del carburador
# en: 0ff79e71
state-bowl-fuel-plenty = Gasolina limpia
# en: 247e5f8f
state-bowl-fuel-dirty = Agua o suciedad
# en: 83b0ca3f
state-bowl-fuel-little = Casi nada
# en: 477c1e8d
observation-prime-fires = Arranque con unas gotas de gasolina nueva
# en: d574b4b4
state-prime-fires-fires-briefly = Prende un momento
# en: 09ec0ab4
state-prime-fires-nothing = No prende
# en: 71939925
observation-fuel-given = Qué se echó la última vez
# en: bdd913ff
state-fuel-given-certain = Seguro que lo bueno
# en: 683661c7
state-fuel-given-doubtful = Puede que otra cosa
# en: 61cc1533
observation-fuel-grade = Clase de gasoil
# en: 3c0b58e2
state-fuel-grade-winter = Gasoil de invierno
# en: d2dcc8f8
state-fuel-grade-summer = De verano, o comprado en verano
# en: 246d2091
observation-water-or-wax = Agua o parafina en el combustible
# en: 71c97457
state-water-or-wax-none = Limpio y claro
# en: d2150304
state-water-or-wax-water = Con agua o suciedad
# en: d3292f01
state-water-or-wax-wax = Turbio o con parafina
# en: 8afbe4ce
state-water-or-wax-ice = Con hielo
# en: 0c53263d
observation-fuel-level = Combustible en el depósito
# en: e1947c03
state-fuel-level-seen-enough = Mirado: hay bastante
# en: 2cf40338
state-fuel-level-said-enough = Debería haber bastante
# en: f793de20
state-fuel-level-low = Poco combustible
# en: c6c094bc
state-fuel-level-empty = Depósito vacío
# en: b8d7d458
observation-fuel-age = Tiempo que tiene el combustible
# en: 1ddf3e66
state-fuel-age-fresh = Combustible de menos de un mes
# en: 9a3d68e7
state-fuel-age-months = Combustible de uno a tres meses
# en: 5db5a615
state-fuel-age-over-winter = Combustible de la temporada pasada
# en: 0477133a
state-fuel-age-years = Combustible de más de un año
# en: 528fbed7
observation-fuel-drips = Goteo o mancha mojada debajo de la máquina
# en: 702ec3f2
state-fuel-drips-dry = Seco
# en: e82162a5
state-fuel-drips-wet = Mojado o gotea combustible
# en: 38cbdcaf
observation-fuel-smell = Olor y color de la gasolina
# en: 9816c2ea
state-fuel-smell-fresh = Nueva y clara
# en: fc6276ea
state-fuel-smell-stale = Agria, como a barniz, u oscura
# en: e4e7ca49
observation-flooding-signs = Señales de que se ha ahogado
# en: dc937b59
state-flooding-signs-none = Ninguna
# en: 28fbfd5c
state-flooding-signs-smell = Huele mucho a gasolina en el escape
# en: 748c854e
state-flooding-signs-drips = Gotea gasolina de la admisión
# en: f657ef52
observation-pump-sound = Sonido de la bomba eléctrica de combustible
# en: 61eaaa6a
state-pump-sound-runs = Suena como siempre
# en: 82d91a04
state-pump-sound-silent = No se oye nada
# en: ea290abf
state-pump-sound-rattles = Fuerte o con traqueteo
# en: 79d709d2
observation-last-use = Última vez que funcionó
# en: de5d3171
state-last-use-hours = Funcionó hace horas
# en: 2fe62094
state-last-use-days = Funcionó hace días
# en: 131b80c1
state-last-use-weeks = Funcionó hace semanas
# en: 03f44095
state-last-use-months = Funcionó hace meses
# en: f6687203
observation-how-stopped = Cómo se paró la última vez
# en: a79fd441
state-how-stopped-switched-off-normally = La paré como siempre
# en: a62af767
state-how-stopped-died-at-once = Se paró de golpe
# en: 9273b3b4
state-how-stopped-faded = Se fue apagando hasta pararse
# en: 565ed584
state-how-stopped-under-load = Se paró trabajando
# en: 9c36c698
state-how-stopped-would-not-stop = No se quería parar
# en: f262e7ba
observation-recent-event = Qué pasó poco antes
# en: 7722c9af
state-recent-event-battery-removed = Se quitó o se puso la batería
# en: be2b3f96
state-recent-event-jump-started = La arrancaron con pinzas
# en: 298e509a
state-recent-event-charged = Se cargó la batería
# en: a2b632b9
state-recent-event-pressure-washed = Se lavó a presión
# en: 2e0e80c5
state-recent-event-welded = Se soldó en ella
# en: fc18cdd9
state-recent-event-hit-something = Se dio contra algo
# en: e145c5e8
state-recent-event-tipped = Volcó de lado
# en: 75d28c35
state-recent-event-ran-dry = Se quedó sin combustible
# en: 97cb502e
state-recent-event-refuelled = Se le echó combustible
# en: 46b56607
state-recent-event-flooded = Estuvo metida en agua
# en: 1319edb2
state-recent-event-heavy-rain = Estuvo fuera con mucha lluvia o nieve
# en: f7a9ad2e
state-recent-event-rodents-seen = Se vieron ratones o ratas
# en: 7c17b131
state-recent-event-parts-replaced = Se cambiaron piezas
# en: 138076e4
observation-recent-work = Arreglos hechos hace poco
# en: dfcb7c16
state-recent-work-battery-work = Batería
# en: d71fc9ce
state-recent-work-cable-work = Cables o masa
# en: c2d50ba4
state-recent-work-starter-work = Motor de arranque o solenoide
# en: 8e923e44
state-recent-work-switch-work = Llave o interruptores de seguridad
# en: 83b96668
state-recent-work-wiring-work = Otros cables
# en: c12b3fdc
state-recent-work-fuel-work = Depósito, tubos o filtro de combustible
# en: e364cccf
state-recent-work-carburettor-work = Carburador
# en: 3bcb9c82
state-recent-work-ignition-work = Bujía, bobina o platinos
# en: a57d0108
state-recent-work-engine-work = Se abrió el motor
# en: 43c21158
state-recent-work-oil-work = Cambio de aceite
# en: e22ae21a
state-recent-work-deck-work = Plato de corte o toma de fuerza
# en: c106d1c0
observation-outdoors = Tiempo que hace donde la máquina
# en: 0ec53894
state-outdoors-hot = Hace calor
# en: 329d8172
state-outdoors-mild = Tiempo templado
# en: 17636dd6
state-outdoors-frost = Helada
# en: af146ec5
state-outdoors-hard-frost = Helada fuerte
# en: e2e66608
observation-battery-age = Edad de la batería
# en: 448fdac0
state-battery-age-new = Batería de menos de dos años
# en: 4824f51a
state-battery-age-middle = Batería de dos a cuatro años
# en: 62aa4706
state-battery-age-old = Batería de más de cuatro años
# en: 38a040da
observation-battery-goes-flat = Se descarga sola la batería
# en: 1ea442a1
state-battery-goes-flat-no = No se descarga sola
# en: a6b86e26
state-battery-goes-flat-overnight = Se descarga de un día para otro
# en: f5eb5ae9
state-battery-goes-flat-days = Se descarga en unos días
# en: 7884602e
state-battery-goes-flat-weeks = Se descarga en unas semanas
# en: b385d200
observation-injector-line-fuel = Combustible al aflojar un tubo de inyector
# en: 4cf5b47b
state-injector-line-fuel-spurts = Sale a chorro
# en: 9efd6536
state-injector-line-fuel-dribbles = Gotea
# en: 67e1bca0
state-injector-line-fuel-none = Nada
# en: bdb58b06
observation-return-bubbles = Burbujas en el tubo transparente de retorno
# en: 63980060
state-return-bubbles-none = Sin burbujas
# en: 7cf444cc
state-return-bubbles-bubbles = Burbujas, más al cargarlo
# en: 01685320
observation-injector-test = Inyectores en el banco
# en: 987df719
state-injector-test-good = Presión y chorro buenos
# en: 04e7f51c
state-injector-test-bad = Gotean, poca presión o mal chorro
# en: b69fb333
observation-crank-signal = Régimen en el aparato de diagnosis al girar
# en: 51a70e2f
state-crank-signal-shown = Un régimen fijo
# en: 10c56f33
state-crank-signal-none = Ninguno o a saltos
# en: 4773d4f4
observation-rail-pressure = Presión de combustible en el aparato de diagnosis al girar
# en: 7bcefc2f
state-rail-pressure-builds = Sube
# en: 5e1dfd5d
state-rail-pressure-too-low = Se queda baja
# en: bf607d7c
observation-load-test = Batería bajo carga
# en: d9720c00
state-load-test-passes = Aguanta
# en: c5d50770
state-load-test-fails = No aguanta
# en: 45b48cfc
observation-load-volts = Voltios de la batería al final de la prueba de carga
# en: c87c1502
state-load-volts-fails = Menos de 8,5 V
# en: 5ef0f451
state-load-volts-by-temperature = De 8,5 a 9,6 V
# en: b18b2060
state-load-volts-passes = Más de 9,6 V
# en: 03f2af77
observation-work-since = La avería y el último arreglo
# en: c4a357b8
state-work-since-no-work = No se tocó nada
# en: b729e4fd
state-work-since-before = Ya estaba así antes del arreglo
# en: 53506795
state-work-since-straight-after = Vino justo después del arreglo
# en: 7e710dd6
state-work-since-ran-after = Funcionó bien después del arreglo
# en: 2fc7c368
observation-smoke = Humo del escape al dar al arranque
# en: dc937b59
state-smoke-none = Sin humo
# en: 3495e757
state-smoke-white = Humo blanco
# en: c6cfe6e4
state-smoke-black = Humo negro
# en: ec7d56a0
state-smoke-blue = Humo azul
# en: e3bdf0b1
observation-bangs = Petardazos por el escape o la admisión
# en: 9f49b052
state-bangs-none = Sin petardazos
# en: fc516f1e
state-bangs-bangs = Petardazos o llama
# en: 0f122907
observation-came-on = Cómo vino la avería
# en: 86488070
state-came-on-suddenly = De una vez para otra
# en: b389d996
state-came-on-gradually = Poco a poco, en semanas
# en: 0dac84f3
observation-choke-effect = Qué cambia el estárter
# en: ff718573
state-choke-effect-no-difference = El estárter no cambia nada
# en: d76e2915
state-choke-effect-only-with = Solo arranca o va con estárter
# en: 1eae339a
state-choke-effect-only-without = Mejor sin estárter
# en: 6208aaa2
observation-exhaust-puffs = Aire del escape al dar al arranque
# en: 31bc981f
state-exhaust-puffs-puffs = Sale a soplos
# en: de07d0b3
state-exhaust-puffs-hardly = Casi no sale nada
# en: 71485731
observation-on-start = Qué pasa al dar al arranque
# en: 51b6ced6
state-on-start-nothing = Nada de nada
# en: b4bea008
state-on-start-one-click = Un solo clac
# en: 0f7de35e
state-on-start-fast-clicks = Clac-clac-clac rápido
# en: 0a8b5b0d
state-on-start-slow = Gira despacio
# en: 1bbfc18c
state-on-start-turns-then-stops = Gira un poco y se para
# en: f2fa36eb
state-on-start-uneven = Gira a tirones
# en: d3291b1b
state-on-start-kicks-back = Da coces, se vuelve atrás
# en: 7ca64bd7
state-on-start-spins-alone = El motor de arranque zumba solo
# en: 12c14257
state-on-start-grinds = Rasca
# en: 13aebad2
state-on-start-turns-no-fire = Gira bien, no arranca
# en: f9995213
state-on-start-fires-then-dies = Arranca y se para
# en: 0c791b1b
state-on-start-runs-only-while-held = Solo va mientras se sujeta la llave
# en: b38d3a81
state-on-start-keeps-cranking = El motor de arranque no para
# en: bc9bfc12
state-on-start-starts = Arranca normal
# en: 9bfdcd94
observation-engine-turns = Da vueltas el motor
# en: 06fdbec1
state-engine-turns-normal = Sí, el motor gira como siempre
# en: 4f626bb6
state-engine-turns-slow = El motor gira despacio
# en: 7dbe1205
state-engine-turns-part-turn = El motor da media vuelta o así
# en: 1a4ecdf0
state-engine-turns-no = El motor no gira
# en: 1c18c6ef
observation-click-sound = Qué se oye en el motor de arranque
# en: c08ebd57
state-click-sound-none = No se oye ningún clac
# en: a8bed4bf
state-click-sound-faint = Un clac flojo
# en: 554e6eb2
state-click-sound-loud = Un clac fuerte
# en: 875c3158
state-click-sound-repeated = Clac una y otra vez
# en: 0982fe21
observation-pattern = Cuándo pasa
# en: b5fefa23
state-pattern-every-time = Lo hace siempre
# en: 32921492
state-pattern-sometimes = Lo hace a ratos
# en: 39174115
state-pattern-only-hot = Solo en caliente
# en: 2e9ff333
state-pattern-only-cold = Solo en frío
# en: 130e8031
state-pattern-only-wet = Solo con humedad
# en: 0ba2da31
state-pattern-after-standing = Solo después de estar parada
# en: 582e0fb5
observation-lights-on = Luces con el contacto dado
# en: 58aa311b
state-lights-on-dead = Ninguna luz
# en: ea53b1cb
state-lights-on-dim = Luces flojas
# en: 9e496b1d
state-lights-on-normal = Luces tan fuertes como siempre
# en: e20dce69
observation-lights-at-start = Luces al dar al arranque
# en: fa98a8e8
state-lights-at-start-stay-bright = Las luces siguen fuertes
# en: 746292d8
state-lights-at-start-dim = Las luces bajan
# en: de4c4579
state-lights-at-start-go-out = Las luces se apagan
# en: 1ba99ba3
observation-controls-moved = Después de mover todos los mandos
# en: 41f9d57c
state-controls-moved-no-change = Mandos movidos, sigue igual
# en: b45adc23
state-controls-moved-then-started = Mandos movidos, y arrancó
# en: 3818758b
observation-jump-start = Con pinzas de otra batería
# en: 3376bd93
state-jump-start-not-tried = Sin probar con pinzas
# en: 5861a0d5
state-jump-start-cured = Con pinzas arrancó y siguió en marcha
# en: 42c8a00f
state-jump-start-helped-but-slow = Con pinzas giró mejor, pero despacio
# en: 12735f70
state-jump-start-ran-then-died = Con pinzas arrancó y luego se paró
# en: 41f9d57c
state-jump-start-no-change = Con pinzas sigue igual
# en: e8387507
observation-at-machine = Está usted al lado de la máquina
# en: 5bf4e376
state-at-machine-yes = Sí, al lado
# en: 19b6432a
state-at-machine-can-go = No, pero puedo ir
# en: 1ea442a1
state-at-machine-no = No
# en: cf945741
state-at-machine-for-someone-else = Pregunto por otra persona
# en: cf6b242c
observation-neutral-switch-out-volts = Voltios que salen del interruptor de punto muerto, START
# en: d5a98cdb
state-neutral-switch-out-volts-none = Menos de 1 V
# en: 71bfd148
state-neutral-switch-out-volts-weak = De 1 a 8 V
# en: e696f5f4
state-neutral-switch-out-volts-good = Más de 8 V
# en: 717fdbf8
observation-pto-switch-out-volts = Voltios que salen del interruptor de la toma de fuerza, START
# en: d5a98cdb
state-pto-switch-out-volts-none = Menos de 1 V
# en: 71bfd148
state-pto-switch-out-volts-weak = De 1 a 8 V
# en: e696f5f4
state-pto-switch-out-volts-good = Más de 8 V
# en: ac8fdf14
observation-seat-switch-out-volts = Voltios que salen del interruptor del asiento, START
# en: d5a98cdb
state-seat-switch-out-volts-none = Menos de 1 V
# en: 71bfd148
state-seat-switch-out-volts-weak = De 1 a 8 V
# en: e696f5f4
state-seat-switch-out-volts-good = Más de 8 V
# en: 61958a0f
observation-clutch-switch-out-volts = Voltios que salen del interruptor del embrague, START
# en: d5a98cdb
state-clutch-switch-out-volts-none = Menos de 1 V
# en: 71bfd148
state-clutch-switch-out-volts-weak = De 1 a 8 V
# en: e696f5f4
state-clutch-switch-out-volts-good = Más de 8 V
# en: 97ed9a4d
observation-brake-switch-out-volts = Voltios que salen del interruptor del freno, START
# en: d5a98cdb
state-brake-switch-out-volts-none = Menos de 1 V
# en: 71bfd148
state-brake-switch-out-volts-weak = De 1 a 8 V
# en: e696f5f4
state-brake-switch-out-volts-good = Más de 8 V
# en: 56914b8f
observation-stud-start-volts = Voltios en el espárrago de batería del solenoide, START
# en: e5167a79
state-stud-start-volts-none = Menos de 2 V
# en: c7636fe7
state-stud-start-volts-low = De 2 a 8 V
# en: 296270a0
state-stud-start-volts-sags = De 8 a 9,4 V
# en: 6775bc69
state-stud-start-volts-good = Más de 9,4 V
# en: 5ce526a6
observation-trigger-start-volts = Voltios en el borne pequeño del solenoide, START
# en: d5a98cdb
state-trigger-start-volts-none = Menos de 1 V
# en: 71bfd148
state-trigger-start-volts-weak = De 1 a 8 V
# en: e696f5f4
state-trigger-start-volts-good = Más de 8 V
# en: 18cf6746
observation-starter-start-volts = Voltios en el borne del motor de arranque, START
# en: d5a98cdb
state-starter-start-volts-none = Menos de 1 V
# en: 697b21f0
state-starter-start-volts-low = De 1 a 7,5 V
# en: 92cf7e78
state-starter-start-volts-sags = De 7,5 a 9 V
# en: 8b5ed47f
state-starter-start-volts-good = Más de 9 V
# en: cc469923
observation-ground-drop-volts = Voltios del bloque del motor al borne negativo, START
# en: caf12bf7
state-ground-drop-volts-good = Menos de 0,2 V
# en: 8f094654
state-ground-drop-volts-look-into = De 0,2 a 0,7 V
# en: 0709d83e
state-ground-drop-volts-bad = De 0,7 a 8 V
# en: e696f5f4
state-ground-drop-volts-open = Más de 8 V
# en: 6c6ee3da
observation-minus-clamp-drop-volts = Voltios del borne negativo a su terminal, START
# en: 1d273080
state-minus-clamp-drop-volts-good = Menos de 0,1 V
# en: 50ab306e
state-minus-clamp-drop-volts-look-into = De 0,1 a 0,3 V
# en: 3769b130
state-minus-clamp-drop-volts-bad = Más de 0,3 V
# en: a1ec5de5
observation-plus-clamp-drop-volts = Voltios del borne positivo a su terminal, START
# en: 1d273080
state-plus-clamp-drop-volts-good = Menos de 0,1 V
# en: 50ab306e
state-plus-clamp-drop-volts-look-into = De 0,1 a 0,3 V
# en: 3769b130
state-plus-clamp-drop-volts-bad = Más de 0,3 V
# en: 4d86fb17
observation-starter-amps = Corriente del motor de arranque
# en: b17aa2e3
state-starter-amps-none = Menos de 20 A
# en: e2afab08
state-starter-amps-low = De 20 a 60 A
# en: 0962c348
state-starter-amps-normal = De 60 a 300 A
# en: a961e304
state-starter-amps-high = Más de 300 A
# en: f7cae8cc
observation-battery-rest-volts = Voltios de la batería en reposo
# en: ca740f0d
state-battery-rest-volts-gone = Menos de 9,5 V
# en: 869b9e2c
state-battery-rest-volts-cell-down = De 9,5 a 11 V
# en: d9dffd01
state-battery-rest-volts-flat = De 11 a 12 V
# en: b2ede6c1
state-battery-rest-volts-low = De 12 a 12,4 V
# en: 5ae06f89
state-battery-rest-volts-good = De 12,4 a 12,9 V
# en: e5635adf
state-battery-rest-volts-not-rested = Más de 12,9 V
# en: cba50f6e
observation-battery-start-volts = Voltios de la batería al dar al arranque
# en: fa4e2267
state-battery-start-volts-collapses = Menos de 8 V
# en: f7ed997b
state-battery-start-volts-sags = De 8 a 9,6 V
# en: 38090bfb
state-battery-start-volts-holds = De 9,6 a 11,8 V
# en: 5449ed4b
state-battery-start-volts-no-load = Más de 11,8 V
# en: 63966ec4
observation-cell-spread = Densidad del ácido, vaso más alto menos el más bajo
# en: 5a89390e
state-cell-spread-even = Menos de 0,050
# en: 0ea7662b
state-cell-spread-one-low = 0,050 o más

## Pruebas, lo que dice cada medida, menús

# en: a21c7fe0
check-look-at-air-filter = Filtro del aire
# en: 527a001c
check-look-at-air-filter-ask = Abra la caja del filtro del aire y mire. ¿El filtro está limpio, sucio, o atascado, mojado o roído?
# en: 6dae871c
check-look-at-air-filter-how = Llave quitada. Mire también en el tubo de detrás, por si hay un nido o un trapo. No ponga el motor en marcha sin el filtro.
# en: 2f8a80da
check-look-at-exhaust = Salida del escape
# en: 42152fc3
check-look-at-exhaust-ask = Mire la punta del escape. ¿Está libre, o hay un nido, barro, un trapo, o está aplastada?
# en: 2b5f62dc
check-look-at-exhaust-how = Motor parado y frío; no se mete nada dentro.
# en: 3d51bbee
check-read-contactor-out = Salida del contactor
# en: 2c623201
check-read-contactor-out-ask = ¿Voltios en el espárrago de salida del contactor, llave en START?
# en: 8115bf77
verdict-read-contactor-out-passes = El contactor deja pasar la corriente: mire el cable al motor de arranque, o el propio motor de arranque.
# en: 21283fba
verdict-read-contactor-out-lossy = Se pierden voltios en el contactor o antes. Compare con su espárrago de batería.
# en: 86b820f2
verdict-read-contactor-out-open = El contactor no cierra: no le llega orden, bobina cortada o contactos quemados.
# en: 1e85ae1b
check-read-cable-to-earth = Cable positivo contra masa
# en: b632dc19
check-read-cable-to-earth-ask = Los dos cables fuera de la batería, todo apagado. ¿Cuántos ohmios hay del cable positivo a metal limpio del motor?
# en: c3e25a17
check-read-cable-to-earth-how = No vuelva a poner nunca el cable mientras marque un corto; busque el ojal que toca, y luego un solenoide que no ha soltado.
# en: 8e6940f5
verdict-read-cable-to-earth-short = Corto total: el ojal o el cable toca metal, o los contactos del solenoide están pegados.
# en: e527237e
verdict-read-cable-to-earth-something-on = Algo consume, o hay un cable pelado. Quite los fusibles uno por uno.
# en: 5cea7a49
verdict-read-cable-to-earth-clear = No hay corto en el cable gordo.
# en: 9a692dbd
check-ask-spark-at-clamp = Chispa en el cable de la batería
# en: 9b9f15ec
check-ask-spark-at-clamp-ask = Si hace poco se puso un cable de la batería con todo apagado, ¿saltó chispa?
# en: ed7125d1
check-ask-spark-at-clamp-how = Solo de memoria. No lo vuelva a probar.
# en: b867b4b7
check-look-at-intake-joint = Unión del carburador con el motor
# en: adb85966
check-look-at-intake-joint-ask = ¿Están apretadas y enteras las tuercas, las juntas y la goma entre el carburador y el motor?
# en: d398e150
check-ask-charge-lamp = Testigo de carga
# en: 58cd6f9b
check-ask-charge-lamp-ask = La última vez que funcionó, ¿se apagó el testigo de carga o el dibujo de la batería?
# en: 263f1922
check-look-at-alternator-belt = Correa del alternador
# en: 408389a9
check-look-at-alternator-belt-ask = Llave quitada. ¿Está puesta la correa del alternador, tensa y sin brillo?
# en: 53a03dfb
check-look-at-alternator-belt-how = Motor parado y frío. Apriétela en medio con el pulgar; está bien si cede más o menos el ancho del dedo.
# en: c7c22b59
check-read-charging = Tensión de carga
# en: f21b0b37
check-read-charging-ask = ¿Voltios en la batería con el motor a régimen de trabajo?
# en: 21d4f7ab
check-read-charging-how = Unos 0,1 V más por cada 10 grados menos. Mida otra vez con las luces puestas, y de la carcasa del alternador al borne negativo, donde el límite es 0,2 V.
# en: 833c7900
verdict-read-charging-charging = Carga.
# en: 9c59ab78
verdict-read-charging-weak = Carga poco: correa, uniones o regulador; ponga las luces y mida otra vez.
# en: 6fa5d9f4
verdict-read-charging-none = No carga: correa, conector, cable de excitación, fusible, y luego alternador o bobina.
# en: 12c0ba30
verdict-read-charging-cold = Normal con helada fuerte. Con calor es demasiado: regulador o su masa.
# en: fede0436
verdict-read-charging-too-much = Sobrecarga con cualquier tiempo: regulador o su masa.
# en: 1162b1a3
check-look-at-choke = Mariposa del estárter
# en: 4b90b4a3
check-look-at-choke-ask = Mueva la palanca del estárter y mire la punta del cable y la mariposa en el carburador. ¿La mariposa cierra del todo y vuelve a abrir?
# en: ec45745b
check-look-at-choke-how = Llave quitada, motor frío. Muchas veces se ve quitando la tapa del filtro del aire; vuelva a ponerla.
# en: 2a2dcb2b
check-look-at-joints = Las dos puntas de los dos cables
# en: a99d64f2
check-look-at-joints-ask = Mire las dos puntas de los dos cables de la batería, también donde el negro llega al motor. ¿Qué ve?
# en: 0ec8a2f0
check-look-at-joints-how = Gire cada terminal con la mano, sin herramientas. Si puede, mande una foto de las cuatro puntas.
# en: 4a31d216
check-look-at-controls = Todos los mandos como para arrancar
# en: edd109e1
check-look-at-controls-ask = Mire cada mando e interruptor que tenga la máquina. ¿Está cada uno como dice el manual para arrancar?
# en: aa1d91b7
check-look-at-controls-how = No se fíe del ojo: mueva cada uno y vuelva a ponerlo.
# en: 0cd08b1e
check-look-at-stop-button = Seta de parada de emergencia
# en: 0fb5b2a0
check-look-at-stop-button-ask = ¿Está sacada la seta roja de parada de emergencia? Mire si hay otra.
# en: ce795f35
check-look-at-bar = Barra de seguridad o palanca de hombre muerto
# en: 73a5dd62
check-look-at-bar-ask = ¿Está la barra de seguridad bajada del todo, o la palanca de hombre muerto sujeta, mientras arranca?
# en: c34e444c
check-look-for-bubbles = Aire en el gasoil
# en: 2426d9d0
check-look-for-bubbles-ask = Purgador del filtro abierto una vuelta y dándole a la bomba de mano. ¿Salen burbujas o espuma?
# en: c2606852
check-feel-primer = Bomba de mano
# en: 0f505990
check-feel-primer-ask = Dele veinte golpes a la bomba de mano del filtro de gasoil o de la bomba. ¿Se pone dura o sigue blanda?
# en: 7d2c9e45
check-feel-primer-how = Motor frío, llave quitada. No se abre nada.
# en: 71b00900
check-ask-other-key = Otra llave o el PIN
# en: 3f950e55
check-ask-other-key-ask = ¿Se probó con otra llave, o con el PIN otra vez, tras un minuto con la llave quitada?
# en: 428e6cf3
check-read-reader = Aparato de diagnosis
# en: 24ed30fe
check-read-reader-ask = Llave en ON, aparato enchufado. ¿Contesta la centralita? Apunte cada código como SPN y FMI.
# en: 5f56c3c2
check-read-reader-how = FMI 3 es tensión alta, 4 baja, 5 corriente baja (cortado), 6 alta (corto), 2 a saltos. SPN 168 es la tensión de la batería: arregle eso primero, de ahí salen otros códigos.
# en: f2d02652
verdict-read-reader-alive = La centralita vive: siga sus códigos, la tensión de la batería primero.
# en: 2d28829e
verdict-read-reader-dead = No contesta: alimentación, masa o fusible de la centralita, luego el conector, luego la propia centralita.
# en: dcd9356f
check-read-controller-feed = Alimentación de la centralita
# en: f1c2810e
check-read-controller-feed-ask = ¿Voltios entre las patillas de positivo y masa de la centralita en su conector, llave en ON?
# en: d2aaa59f
check-read-controller-feed-how = Con carga: una lámpara de prueba entre las patillas tiene que lucir fuerte.
# en: 9d6c188a
verdict-read-controller-feed-sound = Alimentación buena: sensores, conectores, luego la centralita.
# en: c3f79223
verdict-read-controller-feed-faulty = Alimentación mala: fusible, relé principal, masa o un conector.
# en: 37a6c446
check-see-cylinder-liquid = Líquido en el cilindro
# en: fcad6fdf
check-see-cylinder-liquid-ask = Bujía o inyector fuera, motor girado despacio con una barra. ¿Sale aceite, gasolina o agua?
# en: 2740af4f
check-see-cylinder-liquid-how = Un trapo encima del agujero, la cara apartada y ninguna chispa cerca. Puede salir un litro.
# en: 04f7ac15
check-ask-oil-grade = Grado del aceite del motor
# en: 06947064
check-ask-oil-grade-ask = ¿Qué aceite lleva el motor? El número delante de la W en el bidón, o un solo número.
# en: e655c132
verdict-ask-oil-grade-fits-frost = 0W gira hasta -35 y 5W hasta -30 grados: no es demasiado espeso.
# en: ce900037
verdict-ask-oil-grade-to-minus-20 = 10W gira hasta -25 y 15W hasta -20 grados; más abajo es demasiado espeso.
# en: 8dfefeaf
verdict-ask-oil-grade-too-thick = 20W gira hasta -15, 25W hasta -10, y un monogrado apenas gira con helada: demasiado espeso para una mañana fría.
# en: 2894f70d
check-turn-by-hand = Girar el motor con una barra
# en: 1644781c
check-turn-by-hand-ask = Llave quitada, cable de bujía fuera o el paro asegurado. ¿Gira el motor con una barra en el cigüeñal?
# en: 27312686
check-look-at-oil = Aceite en la varilla
# en: d84d2f43
check-look-at-oil-ask = Saque la varilla del aceite. ¿Qué aspecto tiene y hasta dónde llega?
# en: d7a0f0fd
check-look-at-oil-how = Motor frío, máquina en llano. Limpie la varilla, métala y sáquela otra vez.
# en: 5e86e57e
check-see-drive-turns = Cuchillas o toma de fuerza que giran también
# en: d1bf4afe
check-see-drive-turns-ask = Cuando el arranque movía el motor con la toma de fuerza desconectada, ¿giraban también las cuchillas o el eje?
# en: 686ba108
check-take-load-off = Correas y acoples fuera
# en: 95486e87
check-take-load-off-ask = Quitando las correas y los acoples uno por uno, ¿gira libre el motor con una barra?
# en: 66a1329c
check-look-at-belts = Correas y poleas
# en: 375b0632
check-look-at-belts-ask = Con el motor parado, mire las correas. ¿Hay alguna quemada o brillante, o chilló o echó humo cuando lo intentó?
# en: 3e2ffd59
check-look-at-tap = Llave de paso
# en: 721f673b
check-look-at-tap-ask = Busque la llave de paso debajo del depósito o en el filtro. ¿Está abierta del todo?
# en: 602f6878
check-look-at-tap-how = La palanca en la línea del tubo es abierta. Muchas máquinas tienen una de la que nadie se acuerda.
# en: 67e786ae
check-hear-fuel-valve = Electroválvula del carburador
# en: 8092c2de
check-hear-fuel-valve-ask = Gire la llave de OFF a ON unas cuantas veces. ¿Hace clic algo en el carburador?
# en: 30fd6253
check-hear-fuel-valve-how = La llave no a START. Otra persona puede escuchar junto al motor mientras no gira nada.
# en: fe086ad2
check-read-fuel-valve = Voltios en la electroválvula
# en: dd3091de
check-read-fuel-valve-ask = ¿Voltios entre el cable de la electroválvula y el bloque del motor, llave en ON?
# en: be109801
verdict-read-fuel-valve-feed-bad = Primero fusible, cable, conector o contacto: una válvula nueva tampoco abriría.
# en: 95af4148
verdict-read-fuel-valve-valve-bad = Le llega corriente: si ahora no hace clic, la avería es la válvula.
# en: 1b8d01b3
check-look-at-fuse = Fusible principal y su portafusibles
# en: 6d3673c7
check-look-at-fuse-ask = Busque el fusible principal cerca de la batería o del motor de arranque. ¿Tiene el hilo entero, y está apretado y limpio?
# en: bd3b8f74
check-look-at-fuse-how = Llave quitada. Sáquelo, mire el hilo y los dos contactos, y vuelva a meterlo. Uno nuevo, solo del mismo número.
# en: 7e421c38
check-ask-fuse-again = Qué hizo un fusible nuevo
# en: fbdfcf7e
check-ask-fuse-again-ask = ¿Se puso un fusible nuevo? ¿Aguantó?
# en: 553dff03
check-ask-fuse-again-how = Solo cuente lo que pasó. No ponga un fusible detrás de otro.
# en: 48b33a3d
check-read-fuse-out = Después del fusible principal
# en: 2e75816d
check-read-fuse-out-ask = ¿Voltios después del fusible principal, llave en ON?
# en: f3b2d80b
check-read-fuse-out-how = Negro al borne negativo, luces puestas para que haya algo de carga. Los fusibles de cable junto al motor de arranque cuentan como fusibles.
# en: 3ba683bc
verdict-read-fuse-out-sound = El fusible deja pasar los voltios de la batería.
# en: 654b5650
verdict-read-fuse-out-lossy = Se pierden voltios antes del portafusibles o en él.
# en: 246531ed
verdict-read-fuse-out-open = No llega nada: fusible, fusible de cable, portafusibles o el cable de antes.
# en: 6ad02267
check-ask-gas-bottle = Gas que queda
# en: 84866d0d
check-ask-gas-bottle-ask = ¿Cuánto gas queda? Compare el peso de la botella o el indicador con una llena.
# en: c2e62f9b
check-ask-gas-bottle-how = Sin llamas y sin fumar. Si huele a gas, cierre la botella, aléjese y llame.
# en: 2d4da357
check-look-at-gas-valve = Llave de la botella de gas
# en: 4f7fa2c7
check-look-at-gas-valve-ask = ¿Está la llave de la botella abierta del todo, y también la de la máquina?
# en: 1915abe9
check-look-at-gas-valve-how = Se abre hacia la izquierda. Abiertas demasiado deprisa, algunas botellas se cortan solas: ciérrela y ábrala despacio.
# en: 26302a33
check-look-at-gas-frost = Escarcha en el regulador
# en: 2b5cc8d0
check-look-at-gas-frost-ask = ¿Está el regulador del gas o la botella blanco de escarcha?
# en: 59baccbe
check-hear-gas-lock = Válvula de corte del gas
# en: a4766ea1
check-hear-gas-lock-ask = Gire la llave de OFF a ON unas cuantas veces. ¿Hace clic algo en la válvula del gas?
# en: 4c64be82
check-read-gas-pressure = Presión del gas
# en: 90e23232
check-read-gas-pressure-ask = La presión del gas después del regulador, al girar con el arranque, ¿es la que pide el fabricante?
# en: 451d2dee
check-read-gas-pressure-how = Solo con formación de gas. Espray buscafugas en cada unión que se abrió.
# en: db252594
check-hand-back-bridges = Puentes fuera, conectores puestos
# en: 0e4a0a03
check-hand-back-bridges-ask = ¿Están fuera todos los cables de prueba y provisionales, puestos todos los conectores y todas las tapas?
# en: ac83c199
verdict-hand-back-bridges-open = Quítelo, y luego haga las demás pruebas.
# en: a694d24f
check-hand-back-gear = No gira con una marcha metida
# en: db1eaf57
check-hand-back-gear-ask = Ruedas calzadas, nadie cerca, según el procedimiento del manual. Con una marcha metida, llave a START un momento. ¿Se queda quieto?
# en: 3b617a38
verdict-hand-back-gear-unsafe = Así no se puede devolver: interruptor de punto muerto, su reglaje y sus cables.
# en: da72ffe9
check-hand-back-pto = No gira con la toma de fuerza conectada
# en: 1ab1b00b
check-hand-back-pto-ask = Nadie cerca, nada enganchado, según el procedimiento del manual. Toma de fuerza o cuchillas conectadas, llave a START un momento. ¿Se queda quieto?
# en: 34fd7b3a
verdict-hand-back-pto-unsafe = Así no se puede devolver: interruptor de la toma de fuerza, su reglaje y sus cables.
# en: 9519f8b4
check-hand-back-seat = No gira sin nadie en el asiento
# en: ea94ba43
check-hand-back-seat-ask = Ruedas calzadas, transmisión desconectada, según el procedimiento del manual. Levántese del asiento, pies en la plataforma, llave a START un momento. ¿Se queda quieto?
# en: 54703530
check-hand-back-seat-how = Algunas máquinas giran sin nadie en el asiento porque están hechas así, en punto muerto y con el freno echado: manda el manual.
# en: cb4c7d80
verdict-hand-back-seat-unsafe = Si el manual no lo permite, así no se puede devolver: interruptor del asiento y sus cables.
# en: 32e76e3a
check-hand-back-clutch = No gira sin pisar el embrague
# en: 37e77334
check-hand-back-clutch-ask = Ruedas calzadas, punto muerto, según el procedimiento del manual. Embrague suelto, llave a START un momento. ¿Se queda quieto?
# en: 2a623db6
verdict-hand-back-clutch-unsafe = Si el manual no lo permite, así no se puede devolver: interruptor del embrague y su reglaje.
# en: d2ad6dbd
check-hand-back-brake = No gira con el freno suelto
# en: 1aa32a01
check-hand-back-brake-ask = Ruedas calzadas, punto muerto, según el procedimiento del manual. Freno suelto, llave a START un momento. ¿Se queda quieto?
# en: e6c10b3f
verdict-hand-back-brake-unsafe = Si el manual no lo permite, así no se puede devolver: interruptor del freno y su reglaje.
# en: 28ea5faf
check-hand-back-three-starts = Tres arranques, uno en caliente
# en: c8e0a088
check-hand-back-three-starts-ask = ¿Arranca tres veces seguidas desde el asiento, una de ellas en caliente?
# en: cc657aa7
check-hand-back-three-starts-how = Dos minutos de descanso entre pruebas en frío; al aire libre.
# en: 5c42a6d4
verdict-hand-back-three-starts-again = Aún no está arreglada: mida mientras falla.
# en: c58d3953
check-hand-back-charging = Voltios de carga
# en: 3c336e25
check-hand-back-charging-ask = Motor a régimen de trabajo, luces puestas, tester en los bornes. ¿Están los voltios de carga donde deben?
# en: 69cb28e9
verdict-hand-back-charging-look = La batería se volvería a descargar o a cocer: primero la carga.
# en: 25a58883
check-hand-back-why-flat = Por qué estaba descargada la batería
# en: a6d79952
check-hand-back-why-flat-ask = Si la batería estaba descargada, ¿se sabe por qué: mucho tiempo parada, algo encendido, no carga, consumo en parado, mal terminal?
# en: 75e31fb5
verdict-hand-back-why-flat-again = Mida los voltios de carga y el consumo en parado, o volverá a pasar.
# en: d428b0f7
check-see-points = Platinos
# en: 3bec3a1d
check-see-points-ask = Tapa fuera. ¿Están los platinos limpios y brillantes, y abren y cierran al girar el motor?
# en: b9093f17
check-see-points-how = En un motor guardado los platinos muchas veces solo tienen una capa; puede bastar con pasar entre ellos una tira de cartulina limpia.
# en: 33a7c8d3
check-see-distributor = Tapa y pipa del distribuidor
# en: bf119806
check-see-distributor-ask = ¿Están la tapa, la pipa y el carboncillo limpios, secos y sin rajas, verdín ni óxido?
# en: 75b0ddd0
check-hear-impulse = Acoplamiento de impulso
# en: fc9a7100
check-hear-impulse-ask = Mientras giraba, ¿la magneto daba un salto o un clac una o dos veces por vuelta, como siempre?
# en: 0038a0e1
check-see-spark-kill-wire-off = Chispa con el cable de paro quitado
# en: d30723ce
check-see-spark-kill-wire-off-ask = Cable de paro suelto en la bobina, probador entre el cable y la bujía. ¿Salta una chispa fuerte al girar?
# en: f85f22f5
check-see-spark-kill-wire-off-how = Esté listo para cerrar el estárter o el combustible, porque ahora la llave no para el motor. Después vuelva a poner el cable.
# en: acc4f420
verdict-see-spark-kill-wire-off-wire-guilty = La bobina está buena: quita la chispa el cable de paro, la llave o un interruptor de seguridad.
# en: e4a5228a
verdict-see-spark-kill-wire-off-coil-guilty = Sigue sin chispa: bobina, su entrehierro, platinos o imanes.
# en: bfd35f2a
check-read-kill-wire = Cable de paro contra masa
# en: f415d125
check-read-kill-wire-ask = Cable de paro suelto en la bobina, tester en ohmios a masa, llave en ON, alguien en el asiento. ¿Abierto, a masa o cambia con un interruptor?
# en: a8b34668
check-read-kill-wire-how = Accione el interruptor del asiento, de las cuchillas y del freno uno por uno, y no desenchufe nada que se quede desenchufado.
# en: cfc45281
check-look-at-lever-cable = Cable e interruptor de paro de la palanca de hombre muerto
# en: 1530de2d
check-look-at-lever-cable-ask = Sujete la palanca de hombre muerto sin tirar de la cuerda. ¿Mueve su cable del todo el freno y el interruptor de paro en el motor?
# en: 22cd9f46
check-look-at-lever-cable-how = Solo mire, manos y pies lejos. Con un tester, el cable de paro no debe tener paso a masa mientras se sujeta la palanca.
# en: ac1de531
verdict-look-at-lever-cable-works = Palanca, cable e interruptor de paro hacen lo suyo.
# en: 6bf62fa1
verdict-look-at-lever-cable-guilty = Aquí se quita la chispa: cable flojo, desenganchado o roto, o el interruptor atascado.
# en: 46f383b6
check-ask-engine-switch = El interruptor del propio motor
# en: d8265b8b
check-ask-engine-switch-ask = ¿Hay en el motor o el manillar un interruptor o palanca con ON/OFF o RUN/STOP? ¿Cómo está puesto?
# en: 441e51d0
check-read-coil-feed = Alimentación de la bobina
# en: caa29d8d
check-read-coil-feed-ask = ¿Voltios entre el borne de entrada de la bobina y el bloque, llave en ON, platinos cerrados?
# en: 6ade706e
check-read-coil-feed-how = Luego otra vez con la llave en START: algunas bobinas se alimentan entonces por otro cable.
# en: 02eefe0b
check-see-flywheel-key = Chaveta del volante
# en: 670f5dcd
check-see-flywheel-key-ask = Tuerca del volante fuera. ¿Están en línea los chaveteros del volante y del cigüeñal, y entera la chaveta?
# en: 586a4420
check-see-lead-order = Orden de los cables de bujía
# en: 271a066e
check-see-lead-order-ask = Cables por orden de encendido, marcas en línea en la compresión del número uno. ¿Está bien?
# en: 485a5d8d
check-see-spark = Chispa con probador
# en: 972e8ba8
check-see-spark-ask = Probador entre el cable y la bujía, bujía sin sacar. ¿Salta una chispa fuerte al girar?
# en: a6d9e3c9
check-see-spark-how = Llave, interruptor de paro y seguros como para funcionar. Al menos 4 mm de salto; una bujía apoyada en el bloque enseña menos de lo que tiene que hacer con presión.
# en: 7bf9eac6
verdict-see-spark-sparks = El encendido da chispa: lo siguiente es combustible, punto y compresión.
# en: 4c36c6fa
verdict-see-spark-no-spark = Lo siguiente, quitar el cable de paro; solo después bujía, platinos y bobina.
# en: 9b1d14ee
check-see-plug = La bujía
# en: 8f63812c
check-see-plug-ask = Tras diez segundos dando al arranque, ¿la bujía está seca, mojada o negra?
# en: 428cb482
verdict-see-plug-starved = No entra combustible: siga el combustible.
# en: 780210ed
verdict-see-plug-wetted = Entra combustible y no prende: chispa, ahogado, combustible malo, compresión.
# en: 7ec00661
verdict-see-plug-fouled = Mucha gasolina o aceite: filtro del aire, estárter, segmentos; primero una bujía nueva.
# en: e2b12e09
check-look-at-plug-cap = Pipa de la bujía
# en: fbcc34f5
check-look-at-plug-cap-ask = ¿Está la pipa del cable gordo metida a fondo en cada bujía, sin rajas ni mordiscos?
# en: f2010708
check-look-at-plug-cap-how = Llave quitada, motor frío. Mire y apriete la pipa con la mano; no saque nada.
# en: 1b8559d9
check-spark-with-new-plug = Chispa con una bujía nueva
# en: 7c57e7a6
check-spark-with-new-plug-ask = Una bujía nueva de la furgoneta en el cable, el cuerpo en metal limpio lejos del agujero de la bujía. ¿Ahora la chispa es fuerte?
# en: be2c56a5
check-look-at-switch-plugs = Interruptores de seguridad, sus conectores y cables
# en: eeee899b
check-look-at-switch-plugs-ask = Mire los interruptores de seguridad debajo del asiento, en pedales, palancas y cambio. ¿Hay un conector suelto, un cable roído, barro o hierba metidos?
# en: b56ea837
check-look-at-switch-plugs-how = Llave quitada. Solo mirar, no tire de nada. También donde se trabajó la última vez.
# en: 37805a76
check-read-key-feed = Alimentación de la llave
# en: 50715d79
check-read-key-feed-ask = ¿Voltios en el borne de entrada de la llave, llave en ON?
# en: c3932337
verdict-read-key-feed-sound = A la llave le llega corriente; mire qué sale de ella.
# en: c407d6ff
verdict-read-key-feed-lossy = Se pierden voltios por el camino: portafusibles, conector, cable o la masa pequeña.
# en: 77ee176b
verdict-read-key-feed-open = No llega nada: fusible, cortacorrientes, conector o cable antes de la llave.
# en: 8f77eb0f
check-read-key-run = Salida de la llave, llave en ON
# en: f5187982
check-read-key-run-ask = ¿Voltios en el borne ON de la llave, llave en ON?
# en: e4bc68f2
check-read-key-run-how = En la propia llave, y luego en el lado del cable de su conector.
# en: 8fe2b2cb
verdict-read-key-run-sound = La llave la deja pasar; si el cuadro está muerto, le llega mal más adelante.
# en: b223fec4
verdict-read-key-run-faulty = Le llega, pero da poco o nada: la llave o su conector.
# en: a72147b1
check-read-key-start = Voltios en el borne START de la llave
# en: a95e1657
check-read-key-start-ask = ¿Voltios en el borne START de la llave, llave en START?
# en: d9e7bfd2
verdict-read-key-start-sound = La llave da la orden de arranque; sígala por los interruptores de seguridad.
# en: 47a0a76d
verdict-read-key-start-lossy = Contacto quemado en la llave, o le llega poca corriente.
# en: 99c76bf4
verdict-read-key-start-open = No hay orden. Si le llega buena corriente, es la llave; no la compre antes de medir lo que le llega.
# en: 9772ed92
check-see-key-plug = Conector de detrás de la llave
# en: 9907c13b
check-see-key-plug-ask = ¿Están el conector y los cables de detrás de la llave limpios, apretados y sin quemar?
# en: 76650bf4
check-ask-key-spring = Llave soltada en START
# en: f614ae85
check-ask-key-spring-ask = Cuando suelta la llave desde la posición de arranque, ¿vuelve sola?
# en: 2410d42a
check-see-preheat-lamp = Testigo de precalentamiento
# en: 94d898b5
check-see-preheat-lamp-ask = Llave en precalentar o en contacto. ¿Se enciende el testigo del muelle y se apaga a los pocos segundos?
# en: a081828d
check-ask-preheat-time = Cuánto se precalentó
# en: 130ae791
check-ask-preheat-time-ask = ¿Cuánto se precalentó antes del último intento, comparado con otras mañanas frías?
# en: 4f283d62
check-read-glow = Corriente de los calentadores
# en: 2735c3a1
check-read-glow-ask = ¿Cuántos amperios van a los calentadores al precalentar?
# en: fb022034
check-read-glow-how = De ocho a nueve amperios por calentador una vez caliente, algo más al principio. Medio minuto como mucho.
# en: 23d180e4
verdict-read-glow-all-glow = De ocho a nueve amperios por el número de calentadores: el precalentamiento funciona.
# en: 9ae413dc
verdict-read-glow-some-dead = Uno cortado de tres quita un tercio: mida cada uno, de 1,0 a 1,5 ohmios, con el cable quitado.
# en: 258d685b
verdict-read-glow-no-feed = Sin corriente: relé, fusible, temporizador o pletina antes que ningún calentador.
# en: f52be2dc
check-read-glow-amps = Corriente por cada calentador
# en: 8a805c01
check-read-glow-amps-ask = ¿Amperios a la pletina de los calentadores al precalentar, divididos por el número de calentadores?
# en: 7e2f3c05
check-read-glow-amps-how = Pinza en el cable de la pletina, medido a los cinco segundos, medio minuto como mucho.
# en: d8488cab
verdict-read-glow-amps-works = De 8 a 9 A por calentador (12 A en frío): el precalentamiento funciona.
# en: 3e67a665
verdict-read-glow-amps-one-of-many = Con seis calentadores puede haber uno muerto: mida cada uno, con el cable quitado.
# en: 4d219253
verdict-read-glow-amps-dead-plugs = Al menos un calentador está cortado: mida cada uno, de 1,0 a 1,5 ohmios, con el cable quitado.
# en: 258d685b
verdict-read-glow-amps-no-feed = Sin corriente: relé, fusible, temporizador o pletina antes que ningún calentador.
# en: 06849c4e
check-read-glow-rail = Voltios en la pletina de los calentadores
# en: 74de0743
check-read-glow-rail-ask = ¿Voltios entre la pletina de los calentadores y el bloque al precalentar?
# en: 3f3f9abb
check-see-hoses = Recorrido de los tubos de combustible
# en: 73109c40
check-see-hoses-ask = Siga la ida y el retorno desde el depósito. ¿Va cada tubo a su sitio, sin dobleces, con el filtro y la bomba según la flecha?
# en: 33159304
check-read-relay-out = Salida del relé de arranque
# en: c0fcd284
check-read-relay-out-ask = ¿Voltios en la salida del relé de arranque, llave en START?
# en: 8a4ab9c5
verdict-read-relay-out-passes = El relé deja pasar la orden: cable al solenoide, o el solenoide.
# en: 8a9f7b02
verdict-read-relay-out-lossy = Contacto del relé quemado, o le llega poca corriente.
# en: 03402328
verdict-read-relay-out-open = El relé no entra o está muerto: mida el lado de su bobina antes de comprar uno.
# en: 2e42150d
check-read-oil-switch = Interruptor de aceite
# en: 3f924779
check-read-oil-switch-ask = Aceite lleno, máquina en llano, cable del interruptor de aceite quitado. ¿Sigue dando el interruptor paso a masa?
# en: 62e0d0c8
check-see-level = Cómo está puesta la máquina
# en: e604fac8
check-see-level-ask = ¿Está el motor más o menos en llano?
# en: 1a5d1d74
check-see-lit-key-out = Luces con la llave quitada
# en: 6c515d99
check-see-lit-key-out-ask = Llave quitada, batería conectada. ¿Sigue encendida alguna luz, pantalla o bomba? Mire a oscuras si puede.
# en: 9908b25c
check-read-draw = Consumo con todo apagado
# en: c38ebf43
check-read-draw-ask = ¿Cuánta corriente sale de la batería con todo apagado?
# en: 028cc435
check-read-draw-how = Tester en 10 A entre el borne negativo y su terminal, diez minutos después de que se haya dormido todo. No gire la llave con el tester en medio.
# en: cc3bdfdc
verdict-read-draw-quiet = No consume nada. Si la batería aún se descarga, pierde ella la carga: cárguela y pruébela bajo carga.
# en: ded090e4
verdict-read-draw-some = Aquí las fuentes no coinciden: mucho para una máquina sencilla, normal donde queda electrónica despierta. Vacía una batería en semanas.
# en: 2e499164
verdict-read-draw-much = Demasiado: quite los fusibles uno por uno, luego el cable del alternador.
# en: 32744136
check-read-battery-alone = Batería sola durante la noche
# en: 97c72336
check-read-battery-alone-ask = Cargada, una hora de reposo y luego una noche con el cable quitado. ¿Se mantienen los voltios en los bornes o bajan 0,2 V o más?
# en: d4d2b7cc
check-read-battery-alone-how = Dos medidas, una por la tarde y otra al día siguiente, con más o menos la misma temperatura. La de recién quitado el cargador no vale.
# en: 47b415c5
verdict-read-battery-alone-holds = La batería guarda la carga: algo de la máquina la consume, o no se carga.
# en: 8ff3c245
verdict-read-battery-alone-loses = La batería pierde ella sola la carga. Cámbiela; no hace falta buscar consumos.
# en: 53056509
check-find-draw-circuit = Qué circuito consume
# en: e21522c1
check-find-draw-circuit-ask = Con el amperímetro en medio, ¿baja la corriente al quitar un fusible, o solo con el cable del alternador suelto?
# en: 393cfc89
check-find-draw-circuit-how = Masa de la batería fuera mientras se suelta el cable del alternador; después puesta otra vez a través del tester.
# en: ede6387f
check-look-at-wires = Aspecto de los cables
# en: 09f07aef
check-look-at-wires-ask = Llave quitada, capó abierto. A lo largo de los cables, ¿ve alguno roído o pelado, un nido, quemaduras, conectores verdes o uno suelto?
# en: 49464595
check-look-at-wires-how = Solo mirar, no toque nada caliente. Si hay un nido o cagadas, dígalo.
# en: 95afdc99
check-see-teeth = Dientes del piñón y de la corona
# en: f331d81f
check-see-teeth-ask = Motor de arranque fuera. ¿Están bien los dientes del piñón y de la corona en toda la vuelta?
# en: 3db3af10
check-see-teeth-how = Gire el motor con una barra, llave quitada, y mire la corona entera.
# en: 382a6873
check-see-brushes = Escobillas y colector
# en: 13d580d7
check-see-brushes-ask = Motor de arranque abierto. ¿Son las escobillas bastante largas y van sueltas? ¿Está el colector limpio y sin quemar?
# en: 5981bebd
check-hear-stop-valve = Solenoide de paro
# en: 14432573
check-hear-stop-valve-ask = Gire la llave de OFF a ON unas cuantas veces. ¿Hace clic algo en la bomba inyectora?
# en: 30fd6253
check-hear-stop-valve-how = La llave no a START. Otra persona puede escuchar junto al motor mientras no gira nada.
# en: 9524546e
check-look-at-stop-knob = Tirador de paro
# en: e315e846
check-look-at-stop-knob-ask = ¿Está el tirador o la palanca de paro metida a fondo?
# en: f45b1c33
check-look-at-stop-knob-how = Sáquelo una vez y métalo con la palma de la mano.
# en: ff43e644
check-look-at-stop-lever = Palanca de paro en la bomba
# en: 363f6b68
check-look-at-stop-lever-ask = Llave en ON, tirador metido. ¿Está la palanca o el vástago de paro de la bomba inyectora en marcha?
# en: 945e7596
check-read-stop-feed = Alimentación del solenoide de paro
# en: 60139fa4
check-read-stop-feed-ask = En el conector del solenoide de paro, llave en ON, luego en START. ¿Hay los voltios que pide su instalación?
# en: e9b234a5
check-read-stop-feed-how = Con corriente para funcionar: voltios de batería en ON, y en algunos un segundo cable solo en START. Con corriente para parar: voltios solo al parar.
# en: 23101a30
verdict-read-stop-feed-solenoid-bad = Le llega lo que debe: si no se mueve, la avería es el solenoide o su varilla.
# en: 48aee821
verdict-read-stop-feed-feed-bad = Primero fusible, relé, temporizador o cable: un solenoide nuevo tampoco se movería.
# en: 463c7eff
check-read-link = Puente entre las baterías
# en: a67f7734
check-read-link-ask = ¿Voltios a lo largo del puente entre las dos baterías, de borne a borne, llave en START?
# en: 61e7a1ac
verdict-read-link-sound = Puente bueno.
# en: f10a57f5
verdict-read-link-between = Limpie y apriete el puente, y mida otra vez.
# en: dcda22f7
verdict-read-link-faulty = El puente entre las baterías está mal.
# en: 9aeb2767
check-read-battery-difference = Las dos baterías comparadas
# en: c8605934
check-read-battery-difference-ask = Puente quitado, las dos reposadas. ¿Cuántos voltios marca una batería más que la otra?
# en: 097b65c2
check-read-battery-difference-how = Luego pruebe la más floja sola bajo carga. Cambie las dos a la vez si tienen la misma edad.
# en: 63f564ee
verdict-read-battery-difference-alike = Iguales en reposo; falta probar cada una bajo carga.
# en: 0f3e2d28
verdict-read-battery-difference-differ = Una tira abajo de la otra: cargue y pruebe cada una por separado.
# en: ca08c4e6
check-read-isolator = Cortacorrientes al girar
# en: da701cb1
check-read-isolator-ask = ¿Voltios de un espárrago del cortacorrientes al otro, llave en START?
# en: 3a6bcc7b
verdict-read-isolator-sound = El cortacorrientes deja pasar la corriente.
# en: 553b44cf
verdict-read-isolator-between = Aquí las fuentes no coinciden: limpie y apriete sus ojales y mida otra vez.
# en: 1a42cffa
verdict-read-isolator-faulty = Cortacorrientes desconectado, o sus contactos u ojales malos.
# en: 6e62da62
check-ask-battery-kind = Plomo o litio
# en: e149f25b
check-ask-battery-kind-ask = ¿Es una batería normal de plomo, o una ligera que pone Li, Lithium o LiFePO4?
# en: 416d07d2
check-read-compression-lowest = Compresión más baja de un diésel pequeño
# en: 571c3475
check-read-compression-lowest-ask = ¿La compresión más baja de todos los cilindros, en bar, con la batería llena y el acelerador abierto?
# en: 099256a5
check-read-compression-lowest-how = Compare con el dato del motor si el manual lo da. 1 kgf/cm2 son 0,98 bar, 100 psi son 6,9 bar.
# en: 5b02b19b
verdict-read-compression-lowest-under-limit = Por debajo del límite de los diésel pequeños (de 25,5 a 26 bar): en frío apenas arrancará.
# en: 743d4731
verdict-read-compression-lowest-near-limit = En el límite, cada fabricante dice una cosa: compare con el manual y mire la diferencia entre cilindros y lo deprisa que gira.
# en: aec9f2f0
verdict-read-compression-lowest-seals = Bastante para prender: mire combustible y calor.
# en: d3383a18
check-read-compression-spread = Diferencia entre cilindros
# en: 877f8e48
check-read-compression-spread-ask = ¿La compresión más alta menos la más baja, en bar?
# en: 8600577c
verdict-read-compression-spread-alike = Iguales: si están todos bajos, segmentos, o gira demasiado despacio.
# en: 42867bad
verdict-read-compression-spread-doubtful = Entre los límites de los fabricantes (2,45 y 2,9 bar): mida otra vez.
# en: 2b024b4e
verdict-read-compression-spread-one-out = Un cilindro se sale: una válvula o la junta de ese.
# en: a8825915
check-see-timing-marks = Marcas de la distribución
# en: 5b031594
check-see-timing-marks-ask = Tapa fuera. ¿Están en línea las marcas del árbol de levas, el cigüeñal y la bomba inyectora?
# en: 9bdce74c
check-hear-cranking = Sonido al girar con el arranque
# en: 4ed8cfd3
check-hear-cranking-ask = Cuando gira, ¿suena como siempre, más rápido y suelto de lo normal, o falta un golpe?
# en: 278b1b2a
check-read-compression = Compresión
# en: a5dbfcda
check-read-compression-ask = ¿Está la compresión dentro del límite del fabricante, y también la diferencia entre cilindros?
# en: 4c3f5d75
check-read-compression-how = Batería llena, acelerador abierto, todas las bujías fuera. Los diésel pequeños unos 31 bar, límite 25,5, diferencia 2,5; en un monocilíndrico de gasolina con descompresor el dato engaña.
# en: ca133e73
verdict-read-compression-seals = Cierra bien: mire otra vez combustible, chispa o calor.
# en: e605bdf0
verdict-read-compression-one-cylinder = Más de un 10 por ciento o 2,5 bar entre cilindros: una válvula o la junta de ese.
# en: 84a1b343
verdict-read-compression-all-low = Todos por debajo del límite: segmentos, o una batería que gira demasiado despacio para juzgar.
# en: 937c3e0f
check-read-compression-with-oil = Segunda prueba con aceite
# en: bdfdfc19
check-read-compression-with-oil-ask = Una cucharadita de aceite en el cilindro bajo y otra vez. ¿Sube la compresión a las claras?
# en: 5c6c53d4
check-read-compression-with-oil-how = En gasolina solo una cucharadita; la cámara pequeña de un diésel admite menos. Si sube, segmentos; si no, válvula o junta.
# en: 85320370
check-read-leak-down = Prueba de fugas
# en: da1df5c2
check-read-leak-down-ask = Cilindro en punto muerto superior, con aire. ¿Por dónde silba?
# en: 1b7e1553
check-read-leak-down-how = Cigüeñal sujeto para que no gire, nadie cerca de correas y cuchillas.
# en: 38759dac
check-read-valve-gap = Holgura de válvulas
# en: 988db05a
check-read-valve-gap-ask = Motor frío, pistón como dice el manual. ¿Es la holgura de válvulas la que pide el fabricante?
# en: c033fc93
check-see-display = Qué dice la pantalla
# en: 472aa53e
check-see-display-ask = Llave en contacto, sin dar al arranque. ¿Qué dice la pantalla? Escriba el código o mande una foto de todo el cuadro.
# en: ec154e59
check-see-display-how = Un código lleva dos números, SPN (de qué se trata) y FMI (de qué manera). Apunte los dos, y cada testigo que se quede encendido.
# en: 284c5e94
verdict-see-display-locked = Bloqueada: llave, PIN o bloqueo a distancia antes que ninguna pieza.
# en: 547282c9
verdict-see-display-fluid = Bloqueo por urea: primero el líquido, su calentador y sus códigos.
# en: 4d4bb8ec
verdict-see-display-control = Espera un mando: póngalo, y luego su interruptor y su conector.
# en: 57974dd9
verdict-see-display-volts = SPN 168 con FMI 4, o el dibujo de la batería: primero batería y uniones; los voltios bajos traen otros códigos.
# en: 5a28621f
verdict-see-display-coded = Lea SPN y FMI con la lista del fabricante; FMI 3 tensión alta, 4 baja, 5 cortado, 6 corto, 2 a saltos.
# en: b004f263
verdict-see-display-dead = Al cuadro no le llega corriente: batería, fusible, llave, masa pequeña.
# en: c4b17b22
menu-see-display-as-always = Lo de siempre
# en: 5a2bc8b6
menu-see-display-dark = Apagada o en blanco
# en: b67410c7
menu-see-display-asks = Pide algo
# en: 91ec9dae
menu-see-display-warns = Un aviso o un código
# en: d0e85342
check-read-dash-volts = Voltios en la pantalla al arrancar
# en: 101ea68a
check-read-dash-volts-ask = ¿Hasta cuánto bajan los voltios en la pantalla mientras da al arranque?
# en: 24f25d53
check-read-dash-volts-how = Desde el asiento, punto muerto, freno de mano echado, toma de fuerza desconectada. Cinco segundos como mucho.
# en: d1c60216
verdict-read-dash-volts-strong = El cuadro mantiene sus voltios bajo carga.
# en: ab707165
verdict-read-dash-volts-look = Batería floja o fría, uniones, o algo que frena mucho.
# en: aace8942
verdict-read-dash-volts-weak = Los voltios se hunden al arrancar: batería, terminales o masa.
# en: 02eac9d6
verdict-read-dash-volts-no-current = Casi no pasa corriente: el circuito de arranque está cortado más adelante.
# en: 4e442692
check-fuel-flow = Combustible hasta el motor
# en: 9911ab7f
check-fuel-flow-ask = En un tarro, ¿sale el combustible libre en la última unión antes del carburador o la bomba inyectora?
# en: d5315b79
check-fuel-flow-how = No en motores common rail, donde los tubos están a mucha presión; ahí mida la presión del raíl.
# en: ecedb823
check-follow-flow = Combustible unión por unión
# en: d8121a9a
check-follow-flow-ask = Desde el depósito, unión por unión. ¿Dónde se corta el combustible?
# en: 0ae1d286
check-follow-flow-how = Salida del depósito y rejilla, luego después del filtro, luego después de la bomba, girando el motor o con la bomba en marcha.
# en: 83d51f4d
check-drain-bowl = Vaciar la cuba del carburador
# en: 6e000e25
check-drain-bowl-ask = Tornillo de la cuba abierto, un tarro debajo. ¿Sale gasolina limpia, agua o suciedad, o casi nada?
# en: 37261e98
check-drain-bowl-how = Mucha y limpia quiere decir que la llegada y la boya están bien, y lo siguiente son los chiclés.
# en: 80a469cf
check-try-primed = Unas gotas de gasolina en la admisión
# en: 9adf05e3
check-try-primed-ask = Media cucharadita de gasolina nueva en la admisión, filtro puesto otra vez, bidón lejos. ¿Prende un momento?
# en: 64c89ed6
check-try-primed-how = Solo gasolina, nunca un espray. Si prende y se para, no llega combustible; si no prende, chispa, punto o compresión.
# en: 71939925
check-ask-fuel-given = Qué se echó la última vez
# en: 8b217e55
check-ask-fuel-given-ask = ¿De qué bidón o surtidor se llenó la última vez? ¿Pudo entrar gasoil, gasolina, agua o urea en el depósito que no era?
# en: f70d2153
check-ask-fuel-given-how = Si pudo entrar otra cosa, no gire la llave, ni siquiera a contacto.
# en: fcb80b29
check-smell-sample = Muestra comparada con el combustible bueno
# en: cd426c49
check-smell-sample-ask = Unas gotas del depósito y del filtro en un cartón, al lado del combustible bueno. ¿Mismo olor, mismo color, mismo secado?
# en: 63f4c716
check-smell-sample-how = La gasolina se seca al momento, el gasoil deja mancha de grasa, la urea deja cristales blancos. La llave se queda quitada hasta estar seguro.
# en: 61cc1533
check-ask-fuel-grade = Clase de gasoil
# en: c81a4227
check-ask-fuel-grade-ask = ¿Cuándo y dónde se compró el gasoil? ¿Es de invierno?
# en: 60584416
verdict-ask-fuel-grade-fits-frost = Los de invierno pasan el filtro hasta -15 o -20 grados; más abajo también se hielan.
# en: 7cb14af3
verdict-ask-fuel-grade-waxes = Los de verano dejan de pasar el filtro entre +5 y -10 grados: con esta helada, sospeche de la parafina.
# en: 804771fd
check-look-at-bowl = Vaso transparente debajo del filtro
# en: e51ab4e2
check-look-at-bowl-ask = Mire por fuera el vaso transparente debajo del filtro de combustible. ¿Limpio, agua o suciedad en el fondo, turbio o con hielo?
# en: 69615572
check-look-at-bowl-how = No abra nada. El agua queda debajo del combustible como una segunda capa.
# en: 2323fa4e
check-look-at-fuel = Combustible en un tarro transparente
# en: 058b5e9a
check-look-at-fuel-ask = Una muestra de la cuba, el filtro o el desagüe en un tarro transparente. ¿Hay agua, suciedad, parafina o hielo?
# en: 0e6ea062
check-look-at-fuel-how = Déjelo reposar un minuto; mírelo a contraluz. Con helada, mire también la salida del depósito.
# en: 1244224b
check-ask-fuel-level = Mirar dentro del depósito
# en: ab512f54
check-ask-fuel-level-ask = Mire dentro del depósito de combustible. ¿Cuánto hay?
# en: afef1de8
check-ask-fuel-level-how = Motor frío, sin fumar, sin llamas. Diga si solo lo cree; diga también qué tapón ha abierto.
# en: d6c30beb
verdict-ask-fuel-level-dip-it = Si no se ha mirado, no se sabe: los indicadores y la memoria fallan muchas veces.
# en: e8785403
verdict-ask-fuel-level-dry = Eche primero el combustible bueno; un diésel que se quedó seco hay que purgarlo después.
# en: b8d7d458
check-ask-fuel-age = Tiempo que tiene el combustible
# en: 3b3af718
check-ask-fuel-age-ask = ¿Cuánto tiempo tiene el combustible del depósito?
# en: 139c9f8d
verdict-ask-fuel-age-petrol-good = Bueno para arrancar.
# en: 6c5caa18
verdict-ask-fuel-age-petrol-doubtful = La gasolina aguanta de tres a seis meses como mucho; con alcohol, menos.
# en: 7df2ae38
verdict-ask-fuel-age-petrol-stale = Demasiado vieja para ser gasolina: combustible nuevo antes que ninguna pieza. En gasoil, busque agua y babas.
# en: 8b21b06c
check-look-under-machine = Goteo debajo de la máquina
# en: 10825d23
check-look-under-machine-ask = Mire debajo del depósito y a lo largo de los tubos de combustible, desde al lado de la máquina. ¿Hay algo mojado, que gotee, o una mancha?
# en: 1af09221
check-look-under-machine-how = Solo mirar. Si huele o ve combustible: sin llamas, sin llave, apártese y díganoslo.
# en: 38cbdcaf
check-smell-fuel = Olor y color de la gasolina
# en: fdbdf1d1
check-smell-fuel-ask = Con el tapón del depósito quitado, ¿la gasolina huele a nueva, o agria como a barniz? ¿Qué aspecto tiene?
# en: aaab140c
check-smell-fuel-how = Motor frío, al aire libre, sin fumar. Basta con oler por encima del tapón.
# en: e4e7ca49
check-ask-flooding = Señales de que se ha ahogado
# en: 7bacd79a
check-ask-flooding-ask = ¿Huele mucho a gasolina en el escape, o gotea gasolina de la entrada de aire?
# en: fac175fa
check-hear-pump = Bomba eléctrica de combustible
# en: d3d68a14
check-hear-pump-ask = Gire la llave a contacto, sin dar al arranque. ¿Oye la bomba de combustible repicar o zumbar unos segundos?
# en: ac743a12
check-ask-last-use = Último uso
# en: 534be5f0
check-ask-last-use-ask = ¿Cuándo funcionó por última vez?
# en: f73ae242
check-ask-how-stopped = Cómo se paró
# en: 4e475b67
check-ask-how-stopped-ask = ¿Cómo se paró la última vez que funcionó?
# en: 4ff1618c
check-ask-recent-event = Qué pasó antes
# en: e7faf7c3
check-ask-recent-event-ask = ¿Pasó algo de esto poco antes?
# en: 9a85d873
check-ask-recent-event-how = Diga todo lo que cuadre, aunque parezca que no tiene nada que ver.
# en: d355d4fd
check-ask-recent-work = Arreglos recientes
# en: c047fae6
check-ask-recent-work-ask = ¿Se ha arreglado o cambiado algo en ella hace poco? ¿Qué se soltó por el camino?
# en: a0bba638
check-ask-weather = Tiempo
# en: 0399149f
check-ask-weather-ask = ¿Qué frío hace donde está la máquina? ¿Ha helado esta mañana?
# en: e2e66608
check-ask-battery-age = Edad de la batería
# en: fd0dfe4d
check-ask-battery-age-ask = ¿Cuánto tiempo tiene la batería, más o menos?
# en: d5988918
check-ask-goes-flat = Si la batería se descarga
# en: 4b258b0a
check-ask-goes-flat-ask = ¿Se descarga sola la batería últimamente?
# en: b52425e5
check-crack-injector-line = Tubo de inyector aflojado
# en: 403e8ea2
check-crack-injector-line-ask = Racor de un inyector abierto media vuelta, un trapo encima, dé al arranque. ¿El gasoil sale a chorro, gotea o nada?
# en: d39be9fe
check-crack-injector-line-how = Solo con bomba mecánica, según su manual, manos y cara apartadas. Nunca en un motor common rail.
# en: 07a2c969
verdict-crack-injector-line-pump-delivers = La bomba y la alimentación están bien: lo siguiente es inyectores, calor, compresión y punto.
# en: 528ebb2e
verdict-crack-injector-line-pump-does-not = Primero el mando de paro y el aire, luego la alimentación, la bomba lo último.
# en: 6c62ae7f
check-watch-return = Tubo transparente en el retorno
# en: 3dfd09eb
check-watch-return-ask = Tubo transparente en el retorno, motor cargado. ¿Salen burbujas, y más con más carga?
# en: 01685320
check-test-injectors = Inyectores en el banco
# en: 1b1dd043
check-test-injectors-ask = Inyectores en el banco de mano. ¿Presión de apertura y chorro según el fabricante?
# en: 60b76e0d
check-read-crank-signal = Régimen al girar con el arranque
# en: d299edc2
check-read-crank-signal-ask = Aparato de diagnosis puesto. ¿Marca un régimen fijo al girar con el arranque?
# en: 143700e6
check-read-rail-pressure = Presión de combustible al girar
# en: ef5301a0
check-read-rail-pressure-ask = Aparato de diagnosis puesto. ¿Sube la presión de combustible hasta el dato del fabricante al girar?
# en: ec8ab1a8
check-read-rail-pressure-how = Solo leer. No se abre nada del lado de alta presión.
# en: b4731098
check-test-under-load = Prueba de la batería bajo carga
# en: 07e6be5d
check-test-under-load-ask = La mitad de la corriente de arranque en frío durante 15 segundos. ¿Aguanta el límite la batería cargada?
# en: 27510742
check-test-under-load-how = Solo cargada al 75 por ciento o más. Límite a 12 V según la temperatura de la batería: 9,6 V de 20 grados para arriba, 9,4 a 10, 9,1 a -1, 8,9 a -7, 8,7 a -12, 8,5 a -18. La mitad o el doble a 6 o 24 V.
# en: f8516927
verdict-test-under-load-sound = La batería vale. Busque en uniones, motor de arranque, carga o consumo en parado.
# en: e6f418dd
verdict-test-under-load-worn = Si estaba bien cargada y reposada, está gastada: póngala nueva. Si no, cárguela y pruebe otra vez.
# en: 1e95c452
check-read-load-volts = Voltios al final de la prueba de carga
# en: 1b206684
check-read-load-volts-ask = ¿Voltios en los bornes al final de 15 segundos con la mitad de la corriente de arranque en frío?
# en: a212d36f
check-read-load-volts-how = Solo cargada al 75 por ciento o más. A 6 o 24 V, la mitad o el doble.
# en: 7b4accc3
verdict-read-load-volts-fit = Aguanta a cualquier temperatura.
# en: 29f34338
verdict-read-load-volts-judge = Juzgue según la temperatura de la batería: al menos 9,6 V de 20 grados para arriba, 9,4 a 10, 9,1 a -1, 8,9 a -7, 8,7 a -12, 8,5 a -18. La mitad o el doble a 6 o 24 V.
# en: c21af971
verdict-read-load-volts-worn = Demasiado bajo con cualquier tiempo: gastada si estaba cargada; si no, cárguela y pruebe otra vez.
# en: 03f2af77
check-ask-work-since = La avería y el último arreglo
# en: 5c69024a
check-ask-work-since-ask = ¿Vino la avería justo después de que alguien trabajara en ella, o estaba ya antes?
# en: 8115407f
check-ask-work-since-how = También cuenta un trabajo por otra cosa: correa, asiento, lavado, batería. ¿Qué se desenchufó o se quitó por el camino?
# en: dac9312f
check-see-smoke = Humo al dar al arranque
# en: 09ce4368
check-see-smoke-ask = Mientras gira, ¿sale humo del escape? ¿De qué color?
# en: 7e167433
verdict-see-smoke-unburnt-diesel = En un diésel, el humo blanco es combustible sin quemar: le llega, pero está demasiado frío o le falta compresión.
# en: 6e334080
verdict-see-smoke-no-fuel = A un diésel que gira sin nada de humo no le llega combustible.
# en: 0343eaca
verdict-see-smoke-too-rich = Poco aire para el combustible: filtro, estárter, escape.
# en: 6da0cd13
verdict-see-smoke-oil = Se quema aceite: segmentos, guías de válvula, aceite de más, o ha volcado.
# en: 9362a079
check-hear-bangs = Petardazos
# en: b833d135
check-hear-bangs-ask = Al intentar arrancar, ¿dio petardazos o echó llama por el escape o la admisión?
# en: c8fd0562
check-ask-came-on = Cómo vino
# en: 2cf0f43b
check-ask-came-on-ask = ¿Pasó de una vez para otra, o cada vez costaba más arrancar, poco a poco, durante semanas?
# en: 0dac84f3
check-ask-choke = Qué cambia el estárter
# en: c610dabe
check-ask-choke-ask = ¿Qué diferencia hubo con el estárter puesto y sin él?
# en: 19e0ac2f
check-see-exhaust-puffs = Aire del escape
# en: d8a5099d
check-see-exhaust-puffs-ask = Mientras giraba, ¿oyó soplar el tubo de escape, o no salía casi nada?
# en: 67233777
check-hear-start = Qué hace la llave
# en: 6b1a1000
check-hear-start-ask = ¿Qué pasa exactamente cuando gira la llave para arrancar?
# en: 03c1084d
check-hear-start-how = Cuente solo lo que vio y oyó la última vez; no hace falta volver a probar.
# en: 594595f8
verdict-hear-start-no-engine-turn = El motor no gira: batería, uniones, circuito de arranque o motor de arranque.
# en: a1195f68
verdict-hear-start-slow-turn = El motor gira mal: poca corriente o algo que lo frena.
# en: 91009652
verdict-hear-start-no-fire = El circuito de arranque funciona: mire combustible, chispa, precalentamiento y aire.
# en: 0482db12
verdict-hear-start-urgent = El motor de arranque no para: corte la corriente ahora mismo.
# en: 46f07eb9
menu-hear-start-does-not-turn = El motor no gira
# en: 0be75f28
menu-hear-start-turns-badly = Gira mal
# en: 6474c6df
menu-hear-start-turns-well = Gira bien
# en: 2ed665c4
menu-hear-start-will-not-stop = El motor de arranque no para
# en: 51a35204
check-try-start = Un intento con la llave
# en: 3aac183f
check-try-start-ask = Pruebe otra vez desde el asiento, por favor, cinco segundos como mucho. ¿Qué pasa?
# en: d4b76c07
check-try-start-how = Punto muerto, freno de mano echado, toma de fuerza desconectada, nadie cerca. Suelte la llave a los cinco segundos.
# en: 0a8bba1a
check-engine-goes-round = Si el motor gira
# en: 67490a9c
check-engine-goes-round-ask = Mientras da al arranque, ¿da vueltas el motor (correa, ventilador o polea)?
# en: 4f612b0a
check-engine-goes-round-how = Acuérdese de qué hacía el ventilador o la correa. Que zumbe solo el motor de arranque no es el motor.
# en: 2e9644c4
check-hear-click = Escuchar el motor de arranque
# en: a0b70712
check-hear-click-ask = Gire la llave una vez, como para arrancar. ¿Qué se oye en el motor de arranque?
# en: 518911d6
check-hear-click-how = Desde el asiento, punto muerto, freno de mano echado, toma de fuerza desconectada. Otra persona puede escuchar a dos pasos.
# en: 0982fe21
check-how-regular = Cuándo pasa
# en: 734e48fc
check-how-regular-ask = ¿Lo hace siempre o solo de vez en cuando?
# en: b5fefa23
menu-how-regular-always = Lo hace siempre
# en: 9b82e3be
menu-how-regular-now-and-then = Lo hace a ratos, sin regla
# en: f6496e18
menu-how-regular-weather-or-heat = Solo en caliente, en frío o con humedad
# en: 0ba2da31
menu-how-regular-standing = Solo después de estar parada
# en: 582e0fb5
check-see-lights = Luces con el contacto dado
# en: 578522fa
check-see-lights-ask = Llave en contacto, sin dar al arranque. ¿Qué tal lucen los faros o el cuadro?
# en: ba5abbb1
check-see-lights-how = Encienda los faros si los tiene y compare con un día normal.
# en: 42d9c3f7
check-see-lights-at-start = Luces al arrancar
# en: 58d6c081
check-see-lights-at-start-ask = Luces encendidas, luego gire la llave como para arrancar. ¿Qué hacen las luces?
# en: 8cad20c0
check-see-lights-at-start-how = Desde el asiento, punto muerto, freno de mano echado, toma de fuerza desconectada. Bastan tres segundos.
# en: f6067fcc
check-where-are-you = Dónde está el cliente
# en: e9099402
check-where-are-you-ask = ¿Está ahora al lado de la máquina?
# en: c8dc71b8
check-told-jump = Si se probó con pinzas
# en: d919f4d4
check-told-jump-ask = ¿Se probó a arrancar con pinzas de otra batería? ¿Qué pasó?
# en: 81b0a0de
check-read-neutral-switch = Después del interruptor de punto muerto
# en: ddf72f23
check-read-neutral-switch-ask = ¿Voltios en el cable que sale del interruptor de punto muerto, llave en START?
# en: e882d4b1
check-read-neutral-switch-how = Compare con el cable que entra. El mando está como para arrancar.
# en: 0bde5432
check-read-pto-switch = Después del interruptor de la toma de fuerza
# en: b4580428
check-read-pto-switch-ask = ¿Voltios en el cable que sale del interruptor de la toma de fuerza, llave en START?
# en: e882d4b1
check-read-pto-switch-how = Compare con el cable que entra. El mando está como para arrancar.
# en: 455b8506
check-read-seat-switch = Después del interruptor del asiento
# en: 0644ae48
check-read-seat-switch-ask = ¿Voltios en el cable que sale del interruptor del asiento, llave en START?
# en: e882d4b1
check-read-seat-switch-how = Compare con el cable que entra. El mando está como para arrancar.
# en: 96011a63
check-read-clutch-switch = Después del interruptor del embrague
# en: 5836f6dc
check-read-clutch-switch-ask = ¿Voltios en el cable que sale del interruptor del embrague, llave en START?
# en: e882d4b1
check-read-clutch-switch-how = Compare con el cable que entra. El mando está como para arrancar.
# en: ad993756
check-read-brake-switch = Después del interruptor del freno
# en: 69b1927d
check-read-brake-switch-ask = ¿Voltios en el cable que sale del interruptor del freno, llave en START?
# en: e882d4b1
check-read-brake-switch-how = Compare con el cable que entra. El mando está como para arrancar.
# en: 9c0cb8f5
check-read-stud = Espárrago de batería del solenoide
# en: c0e4ff5e
check-read-stud-ask = ¿Voltios en el espárrago de batería del solenoide, llave en START?
# en: eda439ab
check-read-stud-how = Negro al borne negativo de la batería, rojo al espárrago, no a la tuerca del cable.
# en: 67a80bbc
verdict-read-stud-sound = El lado positivo está bien hasta el espárrago.
# en: b1324ffb
verdict-read-stud-sag = Compare con el borne de la batería: si hay más de 0,4 V de diferencia, se pierden en el terminal o el cable; si no, cae la batería.
# en: 251d0dad
verdict-read-stud-lossy = Batería hundida, o terminal o cable positivo malo: compare con el borne de la batería.
# en: a0aa5415
verdict-read-stud-open = Sin voltios: terminal positivo, cable, cortacorrientes o batería cortados.
# en: c86634de
check-read-trigger = Voltios en el borne pequeño del solenoide
# en: d531649a
check-read-trigger-ask = ¿Voltios en el borne pequeño del solenoide, llave en START?
# en: 6520c1e8
check-read-trigger-how = Negro al borne negativo de la batería. Al girar, hasta 1 V menos que en el borne es normal en el circuito de mando.
# en: a106e1ce
verdict-read-trigger-command-arrives = La orden de arranque llega: la avería está en el solenoide, el motor de arranque o su alimentación.
# en: 092291c8
verdict-read-trigger-command-weak = Resistencia en la llave, los seguros, los conectores o el portafusibles; siga los voltios hacia atrás.
# en: 86813253
verdict-read-trigger-command-missing = No hay orden de arranque: vaya hacia atrás por relé, seguros y llave.
# en: 21f4e311
check-read-starter = Voltios en el borne del propio motor de arranque
# en: f0e64df5
check-read-starter-ask = ¿Voltios en el borne del motor de arranque, llave en START?
# en: ea579a8d
verdict-read-starter-motor-guilty = Al motor de arranque le llegan sus voltios y no gira: escobillas, bobinado o motor bloqueado.
# en: d4dc1ef7
verdict-read-starter-sag = Mucha carga o batería floja: mida la corriente y el borne de la batería.
# en: c3973717
verdict-read-starter-lossy = Se pierde en los contactos del solenoide o en el cable, o la batería se hunde: compare con el espárrago.
# en: 90c910a5
verdict-read-starter-open = El solenoide no deja pasar nada: sin orden, bobina o contactos.
# en: fca72636
check-read-ground-drop = Lado de masa al girar
# en: b217e112
check-read-ground-drop-ask = ¿Voltios del bloque limpio del motor al borne negativo de la batería, llave en START?
# en: 2042af83
verdict-read-ground-drop-sound = Lado de masa bueno.
# en: 2ff67618
verdict-read-ground-drop-between = Aquí las fuentes no coinciden. Mida la trenza y el terminal uno por uno.
# en: 94e2ab58
verdict-read-ground-drop-faulty = Lado de masa malo: trenza, su otra punta o el terminal negativo.
# en: 0d112da1
check-read-minus-clamp = Terminal negativo al girar
# en: 2d976c10
check-read-minus-clamp-ask = ¿Voltios del borne negativo a su propio terminal, llave en START?
# en: f7744faa
verdict-read-minus-clamp-sound = Unión buena.
# en: 8640f790
verdict-read-minus-clamp-between = Aquí las fuentes no coinciden: limpie, apriete y mida otra vez.
# en: badbe6f0
verdict-read-minus-clamp-faulty = Esta unión está mal: limpie borne y terminal hasta que brillen.
# en: ef398664
check-read-plus-clamp = Terminal positivo al girar
# en: 5449f0e6
check-read-plus-clamp-ask = ¿Voltios del borne positivo a su propio terminal, llave en START?
# en: f7744faa
verdict-read-plus-clamp-sound = Unión buena.
# en: 8640f790
verdict-read-plus-clamp-between = Aquí las fuentes no coinciden: limpie, apriete y mida otra vez.
# en: badbe6f0
verdict-read-plus-clamp-faulty = Esta unión está mal: limpie borne y terminal hasta que brillen.
# en: 4d86fb17
check-read-amps = Corriente del motor de arranque
# en: 5dd76280
check-read-amps-ask = ¿Cuántos amperios van al motor de arranque con la llave en START?
# en: 57d85ca5
verdict-read-amps-open = Sin corriente: circuito cortado, contactos o escobillas.
# en: 9a8ec921
verdict-read-amps-low-slow = Poca corriente y despacio: resistencia en el circuito. Poca y deprisa: el bendix no engrana.
# en: 381b17e4
verdict-read-amps-normal-slow = Corriente normal: si gira despacio, mire los voltios de la batería y el aceite frío.
# en: d967283b
verdict-read-amps-high-slow = Mucha corriente y despacio: motor duro, o motor de arranque que roza o está en corto. Juzgue según el tamaño del motor.
# en: 33c3b801
check-read-rest-volts = Batería en reposo
# en: e5fb3f77
check-read-rest-volts-ask = ¿Qué marca un tester en los dos bornes de la batería, con todo apagado?
# en: f7feabf9
check-read-rest-volts-how = Tester en 20 V de continua, rojo al positivo y negro al negativo, en los propios bornes de plomo. Sin cargador ni arranque en la última media hora.
# en: e7c0aa84
verdict-read-rest-volts-fit = Con carga bastante para probarla bajo carga. Los voltios en reposo no demuestran que esté buena.
# en: 1f41eded
verdict-read-rest-volts-charge-first = Cárguela primero; una prueba ahora solo enseña fallos gordos.
# en: ef2eb5f4
verdict-read-rest-volts-charge-judge-after = Cárguela antes que nada y júzguela después. Si tras una carga completa faltan dos voltios, hay un vaso muerto.
# en: 71d77bf0
verdict-read-rest-volts-wait = Aún no ha reposado, o hay un cargador puesto. Mida más tarde.
# en: 9aa1def8
check-read-battery-start = Batería al girar
# en: d3fb08ea
check-read-battery-start-ask = ¿Voltios en los bornes de la batería con la llave sujeta en START?
# en: 9aa63e62
check-read-battery-start-how = En los bornes, no en los terminales. Cinco segundos.
# en: 160035f5
verdict-read-battery-start-strong = La batería aguanta la carga.
# en: 9de4cb0c
verdict-read-battery-start-look = Batería floja o fría, o algo que frena mucho; aquí las fuentes no coinciden. Compare con la corriente del motor de arranque.
# en: 8126b49d
verdict-read-battery-start-weak = La batería se viene abajo, o el motor de arranque está bloqueado.
# en: 0605c54e
verdict-read-battery-start-no-current = Casi no pasa corriente: el circuito está cortado más adelante.
# en: 644bad52
check-read-cells = Densidad del ácido por vasos
# en: 88c131ce
check-read-cells-ask = ¿Diferencia de densidad del ácido entre el vaso más alto y el más bajo?
# en: e6bced7b
check-read-cells-how = Corrija primero a 27 grados, 0,004 por cada 5,5 grados. Cargue del todo y mida otra vez antes de darla por mala.
# en: 8ec0f9bf
verdict-read-cells-alike = Vasos iguales. Si están todos bajos: cargar.
# en: 74060625
verdict-read-cells-suspect = Vaso sospechoso: cargue del todo y mida otra vez; si sigue igual, la batería está mala. Nivel bajo: solo agua destilada, nada de ácido, y recargue antes de la próxima prueba.

## Actos

# en: ef17ea0c
act-charge-battery = Cargar la batería
# en: b0ada4dc
act-charge-battery-ask = Cargue la batería al aire libre unas cuantas horas, por favor, y luego pruebe desde el asiento. ¿Qué pasa ahora?
# en: 0ffa8150
act-charge-battery-how = Cargador apagado al poner y quitar las pinzas; positivo con positivo, negativo con negativo. Solo una batería entera y sin helar.
# en: 9adfd35f
act-cold-start = Arranque en frío según el manual
# en: 4e4fdfb1
act-cold-start-ask = Estárter del todo, acelerador en arranque, intente diez segundos o dé cinco tirones; quite el estárter en cuanto prenda. ¿Qué pasa?
# en: 8cf0477d
act-cold-start-how = Solo con el motor frío y sin olor a gasolina.
# en: dd38f96f
act-clean-and-tighten-clamps = Limpiar y apretar los terminales
# en: 92be8309
act-clean-and-tighten-clamps-ask = Llave quitada, el terminal de masa fuera primero; limpie los dos bornes y terminales hasta que brillen, apriételos bien, masa al final. Luego pruebe desde el asiento. ¿Qué pasa?
# en: 3f094696
act-clean-and-tighten-clamps-how = Con gafas de protección. Solo con la llave buena y sin tocar los dos bornes a la vez.
# en: 1ce9979c
act-work-primer = Darle a la bomba de mano
# en: fe839e8f
act-work-primer-ask = Dele a la bomba de mano hasta que se ponga dura, cuarenta golpes como mucho, y arranque desde el asiento. ¿Qué pasa?
# en: 60143e18
act-work-primer-how = Con combustible bastante y sin abrir nada. Si solo va mientras bombea, dígalo.
# en: a8aa91fd
act-wait-key-out = Un minuto sin llave, luego la otra llave o el PIN
# en: f7351b5d
act-wait-key-out-ask = Quite la llave un minuto; luego pruebe con la otra llave, o ponga otra vez el PIN. ¿Qué pasa?
# en: b2a771fc
act-wait-key-out-how = Ninguna otra llave, teléfono ni mando cerca de la cerradura.
# en: f947913a
act-clutch-down-start = Arrancar con el embrague pisado
# en: 85422edf
act-clutch-down-start-ask = Embrague a fondo o transmisión desconectada como dice el manual, palanca en medio, y arranque desde el asiento. ¿Qué pasa?
# en: b42ef63b
act-wait-flooded = Esperar a que se le pase el ahogo
# en: f17077d9
act-wait-flooded-ask = Estárter quitado, acelerador a fondo, espere 20 minutos e intente diez segundos o dé cinco tirones. ¿Qué pasa?
# en: b0013aa7
act-wait-flooded-how = Suelte la llave en cuanto prenda. Pare si gotea gasolina por algún sitio.
# en: c33bafee
act-add-fuel = Echar combustible nuevo
# en: 48bf5d01
act-add-fuel-ask = Si el depósito no está lleno: eche cinco litros del combustible bueno, espere dos minutos y pruebe a arrancar. ¿Qué pasa?
# en: d0faf0d0
act-add-fuel-how = Motor frío, al aire libre, sin llamas. Mire antes en el tapón si es gasolina o gasoil. Un diésel que se quedó seco lo tiene que purgar un mecánico.
# en: 71cbf695
act-open-tap = Llave de paso abierta, tapón del depósito aflojado
# en: 9e20672a
act-open-tap-ask = Abra del todo la llave de paso, afloje el tapón del depósito, espere dos minutos y pruebe a arrancar. ¿Qué pasa?
# en: 64a36363
act-open-tap-how = Motor frío, sin llamas. Si arranca y se para a los minutos solo con el tapón apretado, dígalo.
# en: 5fe9741a
act-renew-fuse = Fusible limpiado o cambiado
# en: d720512a
act-renew-fuse-ask = Llave quitada. Saque y meta el fusible dos veces, o ponga uno del mismo número. Luego pruebe desde el asiento. ¿Qué pasa?
# en: 49455ecc
act-renew-fuse-how = Nunca uno más grande. Si se vuelve a fundir, pare.
# en: daed8fb0
act-clear-mud = Quitar barro y hierba
# en: a670c84a
act-clear-mud-ask = Llave quitada. Rasque el barro y la hierba de pedales, palancas, sus varillas y debajo del asiento, mueva cada uno y luego pruebe desde el asiento. ¿Qué pasa?
# en: 25afbcf6
act-clear-mud-how = Nada de chorro de agua en conectores e interruptores. Las manos lejos de las cuchillas.
# en: 3eb083b9
act-let-cool = Dejar enfriar el motor
# en: 5fca7f21
act-let-cool-ask = Déjela apagada 40 minutos con el capó abierto; luego pruebe a arrancar. ¿Qué pasa?
# en: 4c2713e5
act-let-cool-how = No se abre nada mientras esté caliente, tampoco el radiador.
# en: 733ee3ec
act-preheat-twice = Precalentar dos veces
# en: bdd53d1b
act-preheat-twice-ask = Precaliente hasta que se apague el testigo, espere cinco segundos, precaliente otra vez y arranque desde el asiento. ¿Qué pasa?
# en: 224b1961
act-preheat-twice-how = Medio minuto de precalentamiento como mucho en total, y nada de espray de ninguna clase.
# en: ea62894c
act-top-up-oil = Aceite rellenado
# en: d5a9ae59
act-top-up-oil-ask = Motor en llano, frío y parado. Eche el aceite que dice el manual hasta la marca de arriba y pruebe otra vez. ¿Qué pasa?
# en: 89684829
act-top-up-oil-how = Sin pasar de la marca. Si faltaba mucho, mire por dónde se ha ido.
# en: abe96af9
act-reset-tilt = En llano, un minuto sin contacto y luego ON
# en: 6beaccc9
act-reset-tilt-ask = Máquina derecha y en llano, nadie herido, nada de combustible derramado. Quite el contacto un minuto y pruebe desde el asiento. ¿Qué pasa?
# en: aaf2c6de
act-move-controls = Mover cada mando y volver a ponerlo
# en: d1065ed4
act-move-controls-ask = Mueva cada mando una vez y vuelva a ponerlo, por favor; luego pruebe a arrancar. ¿Qué pasa ahora?
# en: cdba9c4c
act-move-controls-how = Lo que tenga, ida y vuelta: palanca de cuchillas o toma de fuerza, palanca de marchas, pedales a fondo, asiento, barra de seguridad, llave de paso, tirador de parada, interruptor del motor, cortacorrientes, parada de emergencia.
# en: 709e1a8e
act-jump-start = Arrancar con pinzas
# en: d538d890
act-jump-start-ask = Arranque con pinzas de una batería buena de 12 voltios, como se describe, desde el asiento. ¿Qué pasa?
# en: cecff457
act-jump-start-how = Misma tensión, los dos negativos a masa, batería entera y sin helar, gafas de protección. Primero positivo con positivo; la última pinza, en metal limpio del motor lejos de la batería. Espere cinco minutos y arranque desde el asiento.

## Arreglos

# en: b74f9575
remedy-renew-air-filter = Limpiar la admisión, filtro nuevo
# en: 749cf382
remedy-renew-air-filter-text = Busque nidos y trapos hasta el acelerador; ponga filtro nuevo, uno de papel no se lava.
# en: 83e9804d
remedy-clear-exhaust = Limpiar el escape
# en: 98fd9767
remedy-clear-exhaust-text = Salida, apagachispas y silenciador; si hay una chapa suelta dentro, suena al golpearlo.
# en: 9ff35a45
remedy-charge-battery = Cargar la batería
# en: 78983fbc
remedy-charge-battery-text = Cárguela del todo, déjela reposar, pruébela bajo carga y busque por qué estaba descargada (voltios de carga, consumo con todo apagado).
# en: 6d4ba55b
remedy-replace-battery = Poner una batería nueva
# en: 31e86894
remedy-replace-battery-text = El cable de masa fuera primero y puesto el último. Limpie los dos terminales, engráselos y mida los voltios de carga, para que la nueva siga cargada.
# en: 05cec718
remedy-clean-earth = Limpiar las uniones de masa
# en: 0767c7f1
remedy-clean-earth-text = Las dos puntas del cable de masa a metal limpio, también entre motor y bastidor; compruébelo con la caída del bloque al borne negativo al girar.
# en: aad898a7
remedy-replace-earth = Poner una trenza de masa nueva
# en: 06948a18
remedy-replace-earth-text = Trenza nueva, al menos de la misma sección que la vieja, a metal limpio en las dos puntas.
# en: 722f72d1
remedy-replace-plus-cable = Cambiar el cable positivo o su punta
# en: 5dbb2cd4
remedy-replace-plus-cable-text = Cambie el ojal o el cable entero; sección según largo y corriente; lejos de cantos vivos y del escape.
# en: 434b5c8d
remedy-clear-short = Apartar el cable positivo del metal
# en: 4aefb65f
remedy-clear-short-text = Primero la batería desconectada. Gire el ojal para que no toque la carcasa, ponga aislante nuevo donde esté quemado, sujete el cable; los ohmios a masa tienen que dar abierto antes de poner el positivo.
# en: 83db55db
remedy-clean-carburettor = Limpiar el carburador
# en: 65e51dff
remedy-clean-carburettor-text = Cuba, chiclé principal (muchas veces en el tornillo de la cuba) y conductos limpios; boya y aguja sueltas. Carburador nuevo si los conductos siguen tapados.
# en: ce8427be
remedy-seal-intake = Cerrar bien la admisión
# en: c768425f
remedy-seal-intake-text = Juntas o goma nuevas, caras planas, tuercas apretadas por igual.
# en: 796b3878
remedy-mend-charging = Arreglar la carga
# en: 3c433605
remedy-mend-charging-text = Primero correa, conectores y fusible; luego alternador o bobina y regulador; luego cargue la batería y mida otra vez los voltios de carga.
# en: 087782c2
remedy-fit-belt = Tensar o cambiar la correa
# en: b1cbd512
remedy-fit-belt-text = Mire por qué se fue (polea agarrotada, aceite). Después cargue la batería y mida los voltios de carga.
# en: 256d8d04
remedy-set-choke = Poner bien estárter y acelerador
# en: 7840b42b
remedy-set-choke-text = Motor frío, todo el estárter; motor caliente, nada; acelerador donde lo pide el manual para arrancar.
# en: b9b91d52
remedy-mend-choke = Soltar o cambiar el mando del estárter
# en: 14dc4170
remedy-mend-choke-text = Mariposa y varillas sueltas, cable sujeto para que la mariposa cierre del todo y abra del todo.
# en: 750e0039
remedy-clean-clamps = Limpiar o cambiar los terminales de batería
# en: 955b5cc5
remedy-clean-clamps-text = Bornes y terminales brillantes, apretados y engrasados; compruébelo con la caída del borne al terminal al girar.
# en: 4bf31c7f
remedy-mend-valves = Soltar o esmerilar la válvula, reglarla
# en: 82a54aee
remedy-mend-valves-text = Primero la holgura, luego si se mueve el vástago; uno pegado puede soltarse con aflojatodo, una válvula quemada se esmerila o se cambia.
# en: ca0d2751
remedy-renew-head-gasket = Cambiar la junta de culata
# en: 2632d94c
remedy-renew-head-gasket-text = Culata y bloque planos, tornillos en el orden y con el par del fabricante, aceite y anticongelante cambiados. Muchas veces es trabajo de taller.
# en: 5f8304e0
remedy-overhaul-engine = Segmentos, pistones, cilindro
# en: 1cd8d686
remedy-overhaul-engine-text = Trabajo de taller. Compárelo con poner otro motor.
# en: 4866bf35
remedy-set-timing = Volver a poner a punto
# en: 7ab1c46c
remedy-set-timing-text = Marcas en línea según el manual, mire si hay dientes comidos o una chaveta cortada; dos vueltas a mano antes de dar al arranque.
# en: a34ba886
remedy-set-controls = Poner bien los mandos
# en: ec5e5536
remedy-set-controls-text = Cada mando, quitar y poner, como dice el manual para arrancar; enséñele al cliente cuál era.
# en: 1fba67e8
remedy-set-valves = Reglar las válvulas
# en: 0bd3c8c4
remedy-set-valves-text = Holgura según el dato del motor, motor frío, pistón en la posición que dice el manual.
# en: 18ffc767
remedy-mend-decompressor = Cambiar el descompresor o su árbol de levas
# en: 284c935c
remedy-mend-decompressor-text = Solo cuando la holgura de válvulas esté bien. El descompresor va por dentro, en el árbol de levas; muchas veces es trabajo de taller.
# en: 77e45518
remedy-winter-diesel = Deshelar, gasoil de invierno, filtro nuevo
# en: 21d481c3
remedy-winter-diesel-text = Caliente la máquina en una nave ventilada con el motor parado, filtro nuevo, gasoil de invierno. Ninguna llama en ninguna parte, nada de mezclar gasolina. Después, purgar.
# en: 11af4782
remedy-thaw-diesel = Deshelar tubo y salida, sacar el agua
# en: c6dad5ec
remedy-thaw-diesel-text = Nave caliente o agua templada en el tubo, sin llama. Vacíe el depósito y el decantador hasta que salga limpio, filtro nuevo, purgar.
# en: 51948abe
remedy-bleed-diesel = Purgar el gasoil
# en: a4accfc0
remedy-bleed-diesel-text = Llene, purgue por orden del depósito a la bomba, busque por dónde entró el aire (junta del filtro, tubo, llave de paso).
# en: cab3b9ee
remedy-clean-diesel = Sacar el agua, filtros nuevos
# en: ad41c175
remedy-clean-diesel-text = Vacíe el depósito y el decantador hasta que salga limpio, filtros nuevos, purgar; trate las babas y busque por dónde entró el agua.
# en: 15d44c64
remedy-renew-diesel-filter = Filtro nuevo, limpiar la rejilla
# en: cb5ecc38
remedy-renew-diesel-filter-text = Primero la llave de paso y la rejilla del depósito, luego el filtro con juntas nuevas; después, purgar.
# en: 2ded6703
remedy-renew-lift-pump = Cambiar la bomba de alimentación
# en: 40a7ce3c
remedy-renew-lift-pump-text = La rejilla de la bomba, su membrana o sus válvulas, voltios si es eléctrica; caudal según el fabricante, y luego purgar.
# en: 21e7f501
remedy-unlock = Desbloquear la máquina
# en: a1b27b62
remedy-unlock-text = Pregunte primero al dueño, al alquilador o a la oficina si hay bloqueo a distancia. La antena de la llave y su conector; luego, dar de alta la llave como dice el fabricante.
# en: c370f47a
remedy-mend-exhaust-fluid = Arreglar el sistema de urea
# en: 890e17c1
remedy-mend-exhaust-fluid-text = Líquido nuevo y del bueno, calentador del depósito y tubos deshelados; quite el bloqueo como dice el fabricante cuando la causa esté arreglada.
# en: 859a0b24
remedy-feed-controller = Arreglar la alimentación de la centralita
# en: 6c14de66
remedy-feed-controller-text = Fusible, relé principal y las dos masas bajo carga; seque y apriete el conector; borre los códigos y mire cuáles vuelven.
# en: 12b720e7
remedy-follow-code = Seguir el código hasta el interruptor, sensor o conector
# en: 139c3aa1
remedy-follow-code-text = Primero los voltios de la batería, luego el conector y el cable de la pieza que dice, luego la pieza. No se queda puesto ningún puente; después compruebe los seguros.
# en: f7e4031f
remedy-renew-controller = Cambiar la centralita
# en: b2079ec6
remedy-renew-controller-text = Solo cuando estén comprobados alimentación, masas y conector. La tiene que programar para la máquina alguien autorizado.
# en: 4ee98585
remedy-free-engine = Revisar y soltar el motor
# en: 426133fa
remedy-free-engine-text = Primero aceite, correas y lo que arrastra; aflojatodo en los cilindros; nunca lo fuerce con el motor de arranque. Muchas veces es trabajo de taller.
# en: d73e6145
remedy-clear-cylinder = Vaciar el cilindro
# en: 6aba0587
remedy-clear-cylinder-text = Bujía o inyector fuera, gire a mano hasta que se vacíe, busque de dónde vino (aguja de la boya, vuelco, junta de culata), cambie el aceite si huele a combustible.
# en: 4041b644
remedy-right-oil = Aceite del grado bueno
# en: 7bae6220
remedy-right-oil-text = Caliente la máquina, vacíe, eche el grado de invierno; el grado tiene que dejar girar en la mañana más fría, no solo bombear.
# en: c244545c
remedy-disengage-load = Desconectar lo que gira a la vez
# en: a5152931
remedy-disengage-load-text = Toma de fuerza, hidráulico y palanca de avance en punto muerto, embrague pisado al arrancar.
# en: f2626bcb
remedy-free-pto-clutch = Soltar, reglar o cambiar el embrague de la toma de fuerza
# en: 8c7cd724
remedy-free-pto-clutch-text = Sin voltios en el embrague con el interruptor apagado, entrehierro o cable según el manual, óxido y cuerdas fuera; las cuchillas tienen que pararse al desconectarlo.
# en: 90e1ca17
remedy-renew-accessory = Cambiar lo que se ha agarrotado
# en: 2cba4734
remedy-renew-accessory-text = Gire cada polea a mano con la correa quitada; la que no gire se cambia, con la correa.
# en: 3fa7dd4b
remedy-right-hydraulic-oil = Aceite hidráulico del grado bueno
# en: ce14f6f7
remedy-right-hydraulic-oil-text = El grado de invierno del fabricante, y el filtro con él; con mucha helada, caliente la máquina y arranque con la transmisión desconectada.
# en: 592951c1
remedy-mend-float = Boya, aguja y asiento nuevos
# en: bf001108
remedy-mend-float-text = Agite la boya por si tiene gasolina dentro, aguja nueva; cambie el aceite que huela a gasolina antes de ponerlo en marcha; si el cilindro está bloqueado, vacíelo primero.
# en: 2909a4e3
remedy-clear-flooding = Quitar el ahogo y buscar por qué
# en: d7f44656
remedy-clear-flooding-text = Seque el cilindro y la bujía, mire la aguja de la boya, el estárter y el filtro del aire, y si pasó gasolina al aceite.
# en: 2566b069
remedy-fill-tank = Llenar el depósito
# en: 6babab5b
remedy-fill-tank-text = El combustible bueno, motor frío, al aire libre. Un diésel que se quedó seco puede pedir que lo purguen.
# en: e0ff28ff
remedy-mend-fuel-leak = Arreglar la fuga y luego llenar
# en: 78e894d0
remedy-mend-fuel-leak-text = Primero pince el tubo o vacíe el depósito; tubo, llave o junta nuevos; busque rozaduras y mordiscos; no se conecta nada eléctrico hasta que lo derramado esté seco.
# en: b2d7fe5f
remedy-open-fuel = Abrir la llave de paso
# en: af5d3050
remedy-open-fuel-text = La palanca abierta del todo, en la línea del tubo.
# en: 49812411
remedy-free-vent = Destapar el respiradero o cambiar el tapón
# en: f229064f
remedy-free-vent-text = El agujero del tapón o el tubo de respiro tiene que dejar entrar aire; tapón nuevo de los que respiran, no de los cerrados.
# en: d98f7beb
remedy-empty-wrong-fuel = Vaciar depósito y tubos, combustible y filtro nuevos
# en: 67fdc956
remedy-empty-wrong-fuel-text = Ni siquiera la llave en ON antes de vaciar el depósito. Limpie tubos y filtro. Urea o gasolina en un diésel common rail es trabajo de taller.
# en: 5dbc83f8
remedy-renew-fuel-valve = Cambiar la electroválvula del carburador
# en: f006ee50
remedy-renew-fuel-valve-text = Solo con voltios comprobados en su cable. El vástago tiene que meterse del todo; limpie su asiento.
# en: c293f1d3
remedy-mend-fuel-valve-wire = Arreglar la alimentación de la electroválvula
# en: 5c284a75
remedy-mend-fuel-valve-wire-text = Del fusible al conector con el tester, llave en ON; busque rozaduras y mordiscos, y mire la masa de la propia válvula.
# en: 3d788719
remedy-renew-fuse = Fusible nuevo y buscar qué lo fundió
# en: fd319106
remedy-renew-fuse-text = Busque con el tester un corto después del fusible antes de poner otro; mire cables rozados, ratones y contactos pegados.
# en: 6b9cf740
remedy-renew-fuse-holder = Limpiar o cambiar el portafusibles
# en: c0f599b3
remedy-renew-fuse-holder-text = Contactos brillantes y con muelle, o portafusibles nuevo; grasa contra la humedad.
# en: 8001e9b8
remedy-mend-short = Buscar y arreglar el corto
# en: 8fc00be3
remedy-mend-short-text = Una lámpara de prueba en el sitio del fusible se apaga al separar el corto. Mire donde los cables pasan por dirección, plato de corte, escape y bisagra del asiento; forre y sujete.
# en: a6cbec89
remedy-change-bottle = Botella de gas llena
# en: 7592b1f8
remedy-change-bottle-text = Junta nueva donde la lleve, espray buscafugas en la unión, al aire libre.
# en: 0c719f57
remedy-open-gas-valve = Abrir la llave del gas
# en: 85284dec
remedy-open-gas-valve-text = Ciérrela, vuelva a abrirla despacio hasta el tope, espere un minuto y arranque. Al aire libre, sin llama.
# en: d050b4fc
remedy-renew-gas-regulator = Deshelar, limpiar o cambiar el regulador
# en: f309e2d9
remedy-renew-gas-regulator-text = Agua templada en uno helado, sin llama; vacíe el poso aceitoso, mire que le llegue agua caliente del motor, membrana nueva si está rota.
# en: 9eef5553
remedy-renew-gas-lock = Arreglar la válvula de corte del gas
# en: 3d388b1b
remedy-renew-gas-lock-text = Primero los voltios en su conector; la de vacío necesita un tubo sano y que el motor gire bastante deprisa.
# en: f6011b7c
remedy-mend-points = Limpiar o cambiar platinos y condensador
# en: 10e47edf
remedy-mend-points-text = Límpielos, ponga la separación del dato del motor, quite todo el aceite; condensador nuevo si los platinos se vuelven a quemar.
# en: 8498d53c
remedy-renew-distributor = Limpiar o cambiar tapa y pipa
# en: 2919acbd
remedy-renew-distributor-text = Lije el contacto de la pipa, seque y limpie la tapa, busque rajas finas; cambie las dos a la vez.
# en: 6286cdc5
remedy-overhaul-magneto = Reparar la magneto
# en: dc0025bd
remedy-overhaul-magneto-text = Acoplamiento suelto y aceitado, platinos y anillo limpios; bobina e imanes son trabajo de especialista. Póngala a punto en el impulso.
# en: 4a3ab7a3
remedy-mend-kill-wire = Buscar dónde toca masa el cable de paro
# en: 690375a7
remedy-mend-kill-wire-text = Siga el cable de la bobina a la llave con un tester; primero las rozaduras en la carcasa y debajo del depósito. Después la llave tiene que parar el motor.
# en: 34127a09
remedy-mend-run-interlock = Interruptor de seguridad nuevo, arreglar sus cables
# en: 59b8e012
remedy-mend-run-interlock-text = Interruptor, conector y varilla; después cada seguro tiene que parar el motor como dice el manual.
# en: 2d19089c
remedy-mend-lever-cable = Reparar el cable o el interruptor de paro de la palanca
# en: 45cfa7da
remedy-mend-lever-cable-text = Cable enganchado y ajustado para que la palanca sujeta suelte el freno y abra el interruptor. Después, al soltarla, el motor debe pararse como dice el manual.
# en: a88613ce
remedy-switch-on = Interruptor del motor en RUN
# en: 8e801224
remedy-switch-on-text = El interruptor del motor o del manillar en ON o RUN, y arranque como dice el manual.
# en: 757ccaf8
remedy-mend-coil-feed = Arreglar la alimentación de la bobina
# en: 229725e0
remedy-mend-coil-feed-text = De la batería por fusible, llave y resistencia hasta la bobina, voltios en cada unión con los platinos cerrados.
# en: fa99b2c4
remedy-renew-flywheel-key = Cambiar la chaveta del volante
# en: c52d1096
remedy-renew-flywheel-key-text = Primero el cable de bujía fuera. Conos limpios y secos, tuerca con el par del fabricante; mire si el cigüeñal está doblado.
# en: 5a8e1733
remedy-sort-leads = Cables de bujía en orden, puesta a punto
# en: 887d6b6e
remedy-sort-leads-text = Busque la compresión del número uno, ponga pipa y marcas, cables según el orden de encendido.
# en: 7c0b2d9d
remedy-press-plug-cap = Pipa de la bujía metida a fondo
# en: 1dcbf710
remedy-press-plug-cap-text = Llave quitada, motor frío. Apriete bien la pipa de cada cable de bujía; no toque ningún cable mientras gira.
# en: 3384c889
remedy-renew-plug = Cambiar la bujía
# en: e6bf787c
remedy-renew-plug-text = Rosca, largo y grado térmico buenos; separación según el dato del motor. Busque por qué se engrasó.
# en: f6b370f3
remedy-renew-plug-lead = Cambiar o poner bien el cable y la pipa de bujía
# en: c7f7e2fa
remedy-renew-plug-lead-text = La pipa hasta que haga clic; si cable y bobina son una pieza y el cable está rajado, se cambia la bobina.
# en: 6b085149
remedy-renew-coil = Cambiar la bobina o el módulo de encendido
# en: 3764cdc6
remedy-renew-coil-text = Primero el cable de paro fuera, para descartarlo; ponga el entrehierro del fabricante del motor (muchas veces 0,25 mm, de memoria).
# en: c0bdc487
remedy-mend-injection-pump = Reparar o cambiar la bomba inyectora
# en: e1573645
remedy-mend-injection-pump-text = Solo según las instrucciones del fabricante, puesta a punto y purgada. Una cremallera pegada puede soltarse; si no, trabajo de taller.
# en: a37c56c2
remedy-renew-injectors = Cambiar o reparar los inyectores
# en: 96b5dd14
remedy-renew-injectors-text = Probados uno por uno, asientos y arandelas nuevos, tubos con el par del fabricante. Los inyectores common rail se dan de alta con su código.
# en: 3597d8f2
remedy-renew-injector-seats = Cambiar asientos y arandelas de inyector
# en: 73bd2a05
remedy-renew-injector-seats-text = Asientos fresados o nuevos, arandelas nuevas, inyectores apretados como dice el manual; compruébelo con el tubo transparente de retorno.
# en: 812d38bc
remedy-mend-rail = Buscar por qué no sube la presión del raíl
# en: ef91be0d
remedy-mend-rail-text = Primero códigos, presión de alimentación y filtro; luego válvula reguladora y sensor; los retornos lo último. Las piezas de alta presión son trabajo de taller.
# en: bf7bf010
remedy-renew-speed-sensor = Cambiar el sensor de giro o arreglar su conector
# en: 0a407e46
remedy-renew-speed-sensor-text = Primero el conector, rozaduras y la distancia con virutas en el sensor; luego el propio sensor.
# en: 14d58303
remedy-mend-switch = Reglar, limpiar o cambiar el interruptor de seguridad
# en: 4db4cad2
remedy-mend-switch-text = Mire palanca, muelle y conector antes que el interruptor. Después compruebe según el manual que no gira con una marcha metida, con la toma de fuerza conectada, sin nadie en el asiento ni con el pedal suelto.
# en: 3a5cc771
remedy-mend-switch-wire = Arreglar conector o cable del interruptor de seguridad
# en: a2fa37c7
remedy-mend-switch-wire-text = Conector hasta que haga clic, cable arreglado y sujeto lejos de lo que se mueve. No se queda puesto ningún puente. Después compruebe según el manual que no gira con una marcha metida, con la toma de fuerza conectada, sin nadie en el asiento ni con el pedal suelto.
# en: a0d51421
remedy-clear-linkage = Limpiar y soltar pedales, palancas e interruptores
# en: e97611e0
remedy-clear-linkage-text = Limpie y aceite las varillas, mire que cada interruptor llegue a su tope, réglelo según el manual; enséñele al cliente dónde se junta el barro.
# en: 3506e624
remedy-renew-key-run = Cambiar la llave de contacto o su conector
# en: 2bb5f996
remedy-renew-key-run-text = Si le llega bien y el borne ON está muerto, la llave. Después se prueban todos los seguros y que la llave lo pare.
# en: 334c0703
remedy-renew-key-switch = Cambiar la llave de contacto
# en: 4258ec09
remedy-renew-key-switch-text = Primero conector y cables (quemados, flojos), luego una llave con los mismos bornes. Después no puede girar con una marcha metida ni con la toma de fuerza conectada.
# en: 66c990bd
remedy-mend-key-plug = Arreglar el conector de detrás de la llave
# en: dfaa7055
remedy-mend-key-plug-text = Terminales nuevos, cable cortado hasta el cobre brillante; cambie también la llave si sus patillas están azules. Busque qué pedía demasiada corriente.
# en: 08d8a4c1
remedy-change-fuel = Sacar la gasolina vieja, limpiar la cuba, echar nueva
# en: d5446024
remedy-change-fuel-text = Vacíe depósito, tubo y cuba en un bidón, filtro nuevo, gasolina nueva. Si se vuelve a parar, los chiclés están engomados.
# en: 581f5d35
remedy-renew-petrol-filter = Filtro y tubo nuevos, limpiar la rejilla
# en: 6f083218
remedy-renew-petrol-filter-text = Rejilla de la salida del depósito, filtro, tubos (se hinchan por dentro); luego mire cuánto sale en la última unión.
# en: e2ee7f1c
remedy-renew-petrol-pump = Cambiar la bomba de gasolina o su tubo de impulsos
# en: 4d71a7e1
remedy-renew-petrol-pump-text = Tubo de impulsos apretado y seco, o voltios en la bomba eléctrica, antes de poner una bomba nueva. Los tubos, cada uno a su boca.
# en: d7928780
remedy-shield-fuel-line = Apartar el tubo del calor
# en: 7165ba6f
remedy-shield-fuel-line-text = Tubo lejos de escape y bloque, pantalla de calor y carcasa de aire en su sitio, aletas limpias.
# en: ad10c6f5
remedy-mend-petrol-injection = Revisar la inyección de gasolina
# en: 31e40358
remedy-mend-petrol-injection-text = Primero los códigos, luego la presión con el manómetro del fabricante, voltios en bomba y relé; quite la presión antes de abrir nada.
# en: 7e01fe73
remedy-renew-glow-plugs = Cambiar los calentadores fundidos
# en: 352bf35d
remedy-renew-glow-plugs-text = Mida cada calentador (de 1,0 a 1,5 ohmios). No fuerce uno agarrotado; cámbielos todos si hay dos muertos.
# en: 932afe34
remedy-renew-glow-relay = Cambiar relé o temporizador, arreglar la pletina
# en: 2ee5503c
remedy-renew-glow-relay-text = Fusible, luego voltios a la entrada y a la salida del relé y en su bobina al precalentar, luego tuercas y óxido de la pletina.
# en: 78a778b0
remedy-preheat-right = Precalentar como dice el manual
# en: 019851a6
remedy-preheat-right-text = Enséñele al cliente cuánto hay que precalentar con frío.
# en: 8267a53f
remedy-sort-hoses = Tubos y filtro bien puestos
# en: ef5dfca5
remedy-sort-hoses-text = Siga ida y retorno desde el depósito, flechas de filtro y bomba según va el combustible, sin dobleces; un diésel se purga.
# en: 577b1773
remedy-replace-relay = Cambiar el relé de arranque
# en: 7fda852f
remedy-replace-relay-text = Limpie el zócalo, ponga un relé con las mismas patillas y mire que solo gire con todos los seguros cerrados.
# en: 421b2661
remedy-replace-solenoid = Cambiar el solenoide o el contactor
# en: 6dc26019
remedy-replace-solenoid-text = Los bornes iguales que en el viejo. Después no puede girar con una marcha metida, con la toma de fuerza conectada ni sin nadie en el asiento.
# en: 90a3bbd5
remedy-fill-oil = Echar aceite y buscar por dónde se fue
# en: 93ffba15
remedy-fill-oil-text = Hasta la marca de arriba, máquina en llano. Mire retenes, respiradero y filtro del aire para ver por dónde se fue.
# en: bfb50590
remedy-renew-oil-switch = Cambiar el interruptor de aceite o su cable
# en: 67bace04
remedy-renew-oil-switch-text = Primero el cable (rozado contra el metal), luego el interruptor o el módulo. Después el protector tiene que volver a funcionar.
# en: f19faaa5
remedy-reset-tilt-guard = Rearmar el protector de vuelco
# en: dd8d5a08
remedy-reset-tilt-guard-text = Si ha estado tumbada, mire si hay aceite en el cilindro y combustible derramado antes de dar al arranque. Sensor derecho y apretado.
# en: 7d22bb90
remedy-find-draw = Buscar qué se queda encendido
# en: af03f4fe
remedy-find-draw-text = Quite los fusibles uno por uno con el amperímetro en medio, y siga el circuito que hizo bajar el consumo. Cargue la batería y pruébela bajo carga.
# en: e291e8b6
remedy-mend-bare-wire = Arreglar cables roídos o rozados
# en: 6283f372
remedy-mend-bare-wire-text = Masa de la batería fuera. Siga el mazo por detrás de cuadro, depósito y asiento; arregle cada cable pelado, sujételo lejos de los cantos, quite el nido y mida otra vez el consumo en parado.
# en: d1c61dca
remedy-mend-wiring = Arreglar los cables del arranque
# en: 9fe4dddd
remedy-mend-wiring-text = Siga los voltios de la llave al solenoide con la llave sujeta; donde se pierden, ahí está. Terminal, funda y sujetar.
# en: 80fb1fc3
remedy-wire-right = Poner los cables en su sitio
# en: 92021f21
remedy-wire-right-text = Guíese por el esquema, no solo por el color. La masa de la batería lo último. Después compruebe que no gira con una marcha metida, con la toma de fuerza conectada ni sin nadie en el asiento.
# en: 60de9104
remedy-renew-drive = Limpiar o cambiar el bendix
# en: d219794b
remedy-renew-drive-text = Lave la hélice y déjela seca, mueva el piñón a mano; cámbielo si patina o tiene los dientes redondos.
# en: d2972b84
remedy-renew-ring-gear = Cambiar la corona
# en: 8ddbc168
remedy-renew-ring-gear-text = Mire la corona entera girando el motor poco a poco. En casi todas las máquinas es trabajo de taller.
# en: c6d10cb2
remedy-replace-brushes = Cambiar las escobillas del motor de arranque
# en: eb8d9f2c
remedy-replace-brushes-text = Por debajo de unos dos tercios de su largo están gastadas. Limpie el colector; motor de arranque nuevo si está quemado.
# en: 7bd1efa5
remedy-replace-starter = Cambiar el motor de arranque
# en: d3952ec3
remedy-replace-starter-text = Metal limpio debajo de su brida. Después tres arranques, uno de ellos en caliente.
# en: 5002ccbc
remedy-free-pinion = Soltar el piñón
# en: 23ce179b
remedy-free-pinion-text = Afloje el motor de arranque, suelte el piñón, mire los dientes de los dos; limpie el bendix, sin aceite en la hélice.
# en: e71db6b6
remedy-renew-stop-solenoid = Soltar o cambiar el solenoide de paro
# en: 4dc7a257
remedy-renew-stop-solenoid-text = Solo con la alimentación comprobada. Vástago y varilla sueltos y reglados como dice el manual; después la llave tiene que parar el motor.
# en: 8b6a8646
remedy-mend-stop-feed = Arreglar la alimentación del solenoide de paro
# en: 9215880b
remedy-mend-stop-feed-text = Del fusible por relé o temporizador hasta el conector, voltios en cada unión. Nadie ata la palanca en marcha; después la llave tiene que parar el motor.
# en: 1c834c6f
remedy-push-stop-knob = Tirador de paro metido
# en: f0af0f54
remedy-push-stop-knob-text = Meta el tirador a fondo; mire que la palanca de la bomba haga todo el recorrido.
# en: 672aa4ae
remedy-free-stop-cable = Soltar o cambiar el cable de paro
# en: 0edec54c
remedy-free-stop-cable-text = Cable y palanca aceitados y sueltos, muelle de retorno en su sitio; después el tirador tiene que parar el motor.
# en: c9be96c3
remedy-renew-isolator = Cambiar el cortacorrientes
# en: 7b7817e2
remedy-renew-isolator-text = De los mismos amperios; ojales apretados y engrasados; mida la caída entre sus dos lados al girar.
# en: 425dfc70
remedy-wake-lithium = Despertar y cargar la batería de litio
# en: d9bf070d
remedy-wake-lithium-text = Primero súbala por encima de cero grados. Solo un cargador hecho para ella; ni programa de plomo ni pinzas. Luego mida el consumo en parado y los voltios de carga.

## Piezas

# en: d3780760
part-battery = Batería de arranque
# en: 7530fea4
part-battery-fit-1 = voltios
# en: 2d3a0c34
part-battery-fit-2 = corriente de arranque en frío
# en: 50f746a2
part-battery-fit-3 = medidas y posición de los bornes
# en: 6bd31015
part-battery-clamp = Terminal de batería
# en: a9628503
part-battery-clamp-fit-1 = medida del borne
# en: d42d703e
part-earth-strap = Trenza de masa
# en: 4f3dfdee
part-earth-strap-fit-1 = largo y medida del ojal
# en: 10f71a88
part-battery-cable = Cable de batería con ojales
# en: 0f82aca6
part-battery-cable-fit-1 = largo
# en: a1ccd61a
part-battery-cable-fit-2 = sección
# en: 60b6135d
part-battery-cable-fit-3 = medida del ojal
# en: 7862a18a
part-cable-lugs = Ojales de cable y funda
# en: 5aed4a17
part-fuses = Fusibles surtidos
# en: bc00afbf
part-fuses-fit-1 = forma y amperios
# en: 54daf71c
part-fuse-holder = Portafusibles
# en: 0588c817
part-fuse-holder-fit-1 = forma del fusible
# en: 4bb64660
part-isolator = Cortacorrientes
# en: b5f2265d
part-isolator-fit-1 = amperios
# en: d6ec3c70
part-isolator-fit-2 = medida del espárrago
# en: 27723f15
part-key-switch = Llave de contacto
# en: ac7d900d
part-key-switch-fit-1 = número de bornes
# en: 2c70e12b
part-key-switch-fit-2 = llave
# en: f61259c2
part-safety-switch = Interruptor de seguridad
# en: 4b8d4445
part-safety-switch-fit-1 = abierto o cerrado en reposo
# en: ac7d900d
part-safety-switch-fit-2 = número de bornes
# en: 81df6358
part-safety-switch-fit-3 = sitio
# en: f1d95962
part-start-relay = Relé de arranque
# en: 7530fea4
part-start-relay-fit-1 = voltios
# en: ac7d900d
part-start-relay-fit-2 = número de patillas
# en: 8b69cb3d
part-contactor = Contactor de arranque
# en: 7530fea4
part-contactor-fit-1 = voltios
# en: bbfef501
part-contactor-fit-2 = tres o cuatro bornes
# en: 20032501
part-solenoid = Solenoide de arranque (automático)
# en: 7530fea4
part-solenoid-fit-1 = voltios
# en: f3255657
part-solenoid-fit-2 = tipo de motor de arranque
# en: 3863247f
part-starter = Motor de arranque
# en: 7530fea4
part-starter-fit-1 = voltios
# en: c9349dab
part-starter-fit-2 = dientes
# en: 9393e70c
part-starter-fit-3 = sentido de giro
# en: d04ba736
part-starter-exchange = Motor de arranque de intercambio
# en: 7530fea4
part-starter-exchange-fit-1 = voltios
# en: c9349dab
part-starter-exchange-fit-2 = dientes
# en: 9393e70c
part-starter-exchange-fit-3 = sentido de giro
# en: 8286f5aa
part-brush-set = Juego de escobillas
# en: f3255657
part-brush-set-fit-1 = tipo de motor de arranque
# en: 8030e1a9
part-starter-drive = Bendix
# en: c9349dab
part-starter-drive-fit-1 = dientes
# en: f3255657
part-starter-drive-fit-2 = tipo de motor de arranque
# en: 625d080a
part-ring-gear = Corona o volante
# en: c9349dab
part-ring-gear-fit-1 = dientes
# en: 5a18a59d
part-ring-gear-fit-2 = tipo de motor
# en: 27239d3b
part-alternator = Alternador o dinamo
# en: 7530fea4
part-alternator-fit-1 = voltios
# en: b5f2265d
part-alternator-fit-2 = amperios
# en: fc6f05bc
part-alternator-fit-3 = polea
# en: 50a2b32b
part-regulator = Regulador de carga
# en: eaeb27de
part-regulator-fit-1 = bornes
# en: b5f2265d
part-regulator-fit-2 = amperios
# en: fae12880
part-belt = Correa del alternador
# en: 0f82aca6
part-belt-fit-1 = largo
# en: 1900eab6
part-belt-fit-2 = perfil
# en: 135fd278
part-controller = Centralita del motor
# en: bc020a35
part-controller-fit-1 = máquina
# en: 35390f54
part-controller-fit-2 = programa
# en: 5400c44a
part-exhaust-fluid = Urea en bidón
# en: 04af3879
part-oil-switch = Interruptor de aceite bajo o módulo protector
# en: 5a18a59d
part-oil-switch-fit-1 = tipo de motor
# en: 39200d1e
part-oil-switch-fit-2 = rosca
# en: 74e53870
part-wire-and-crimps = Cable y terminales de apretar
# en: d54fa6c7
part-spark-plug = Bujía
# en: 39200d1e
part-spark-plug-fit-1 = rosca
# en: ed4561f6
part-spark-plug-fit-2 = largo
# en: a8273660
part-spark-plug-fit-3 = grado térmico
# en: a947d9f2
part-ignition-coil = Bobina o módulo de encendido
# en: 5a18a59d
part-ignition-coil-fit-1 = tipo de motor
# en: d56b9098
part-fresh-petrol = Gasolina nueva en bidón
# en: 7f282a92
part-fresh-diesel = Gasoil nuevo en bidón
# en: 9d2b0b85
part-fresh-diesel-fit-1 = de invierno si hiela
# en: 4b78a885
part-fuel-filter = Filtro de combustible
# en: 541bb1bf
part-fuel-filter-fit-1 = de tubo o de cartucho
# en: f2521d49
part-fuel-line = Tubo de combustible y abrazaderas
# en: 078a3a85
part-fuel-line-fit-1 = diámetro interior
# en: e364cccf
part-carburettor = Carburador
# en: 5a18a59d
part-carburettor-fit-1 = tipo de motor
# en: cc7aed70
part-carburettor-kit = Juego de juntas y boya de carburador
# en: d2d8b17b
part-carburettor-kit-fit-1 = tipo de carburador
# en: 849c6be1
part-fuel-solenoid = Electroválvula de corte de combustible
# en: 7530fea4
part-fuel-solenoid-fit-1 = voltios
# en: 39200d1e
part-fuel-solenoid-fit-2 = rosca
# en: f2f0dd02
part-fuel-pump = Bomba de combustible
# en: 41b589ea
part-fuel-pump-fit-1 = de impulsos
# en: 65db8c64
part-fuel-pump-fit-2 = mecánica o eléctrica
# en: 5981bebd
part-stop-solenoid = Solenoide de paro
# en: 7530fea4
part-stop-solenoid-fit-1 = voltios
# en: 8dcc2759
part-stop-solenoid-fit-2 = de tirar o de empujar
# en: 274cb0ce
part-glow-plugs = Juego de calentadores
# en: 7530fea4
part-glow-plugs-fit-1 = voltios
# en: 39200d1e
part-glow-plugs-fit-2 = rosca
# en: 12886f9d
part-glow-plugs-fit-3 = número
# en: 123439c1
part-glow-relay = Relé de calentadores
# en: 7530fea4
part-glow-relay-fit-1 = voltios
# en: b5f2265d
part-glow-relay-fit-2 = amperios
# en: a21c7fe0
part-air-filter = Filtro del aire
# en: 5a18a59d
part-air-filter-fit-1 = tipo de motor
# en: 1a08c476
part-engine-oil = Aceite de motor del grado bueno
# en: 1d67c38e
part-engine-oil-fit-1 = grado según la época
# en: ec1fe88a
part-gasket-set = Juego de juntas de culata
# en: 5a18a59d
part-gasket-set-fit-1 = tipo de motor
# en: 60e81710
part-fuel-cap = Tapón de depósito con respiradero
# en: f0e61ba4
part-fuel-cap-fit-1 = medida de la boca
# en: 7de25a83
part-fuel-tap = Llave de paso con rejilla
# en: 39200d1e
part-fuel-tap-fit-1 = rosca
# en: 570fd6ff
part-fuel-tap-fit-2 = medida del tubo
# en: cacc1c37
part-control-cable = Cable de estárter o de paro
# en: 0f82aca6
part-control-cable-fit-1 = largo
# en: b7a7513c
part-control-cable-fit-2 = puntas
# en: d9a3fa5f
part-plug-lead = Cable y pipa de bujía
# en: e8b16519
part-plug-lead-fit-1 = diámetro del cable
# en: 2b7ecd7d
part-plug-lead-fit-2 = forma de la pipa
# en: 2ce2e785
part-points = Platinos y condensador
# en: e0c064c2
part-points-fit-1 = tipo de distribuidor o magneto
# en: 33a7c8d3
part-distributor-parts = Tapa y pipa de distribuidor
# en: 176c5894
part-distributor-parts-fit-1 = tipo de distribuidor
# en: 02eefe0b
part-flywheel-key = Chaveta del volante
# en: 5a18a59d
part-flywheel-key-fit-1 = tipo de motor
# en: 516a9c9b
part-injection-pump = Bomba inyectora (intercambio)
# en: 2b020323
part-injection-pump-fit-1 = número de motor y de bomba
# en: 7bc0eceb
part-injectors = Inyectores o toberas con arandelas
# en: 5a18a59d
part-injectors-fit-1 = tipo de motor
# en: 12886f9d
part-injectors-fit-2 = número
# en: a817f918
part-speed-sensor = Sensor de giro de cigüeñal o de levas
# en: 5a18a59d
part-speed-sensor-fit-1 = tipo de motor
# en: 0daf0c9c
part-speed-sensor-fit-2 = conector
# en: c9f8cc09
part-silencer = Silenciador
# en: 5a18a59d
part-silencer-fit-1 = tipo de motor
# en: 653fc760
part-silencer-fit-2 = brida
# en: 322c89fa
part-camshaft = Árbol de levas con descompresor
# en: 5a18a59d
part-camshaft-fit-1 = tipo de motor
# en: 780058a8
part-pto-clutch = Embrague de toma de fuerza o de cuchillas
# en: 7530fea4
part-pto-clutch-fit-1 = voltios
# en: 706cd6db
part-pto-clutch-fit-2 = agujero
# en: b508174e
part-pto-clutch-fit-3 = medida de la polea
# en: ac8abfa6
part-drive-belt = Correa de ventilador o de transmisión
# en: 2983db7a
part-drive-belt-fit-1 = largo y perfil
# en: 2ed3dd09
part-water-pump = Bomba de agua con junta
# en: 5a18a59d
part-water-pump-fit-1 = tipo de motor
# en: 96718126
part-hydraulic-oil = Aceite hidráulico
# en: 53b20b70
part-hydraulic-oil-fit-1 = grado del fabricante
# en: 159270ca
part-hydraulic-oil-fit-2 = litros
# en: a6cbec89
part-gas-bottle = Botella de gas llena
# en: 2a8e5f2d
part-gas-bottle-fit-1 = medida y rosca
# en: f035fbe0
part-gas-regulator = Regulador de gas o su juego de juntas
# en: 5a18a59d
part-gas-regulator-fit-1 = tipo de motor
# en: b667446e
part-gas-regulator-fit-2 = presión
# en: 59baccbe
part-gas-valve = Válvula de corte del gas
# en: c826b39f
part-gas-valve-fit-1 = voltios o vacío
# en: 39200d1e
part-gas-valve-fit-2 = rosca

## Peligros

# en: ab4eeb6d
hazard-safe-stop = Máquina asegurada
# en: 803abdbb
hazard-safe-stop-caution = Freno de mano echado, punto muerto, cuchillas y toma de fuerza desconectadas, llave quitada, apero abajo.
# en: dbc483d7
hazard-safe-stop-safe-1 = freno de mano echado
# en: 3013cce2
hazard-safe-stop-safe-2 = punto muerto
# en: 388f51ed
hazard-safe-stop-safe-3 = toma de fuerza y cuchillas desconectadas
# en: a018d5c5
hazard-safe-stop-safe-4 = llave quitada
# en: 364c9e6a
hazard-safe-stop-safe-5 = apero bajado
# en: 6b4c5398
hazard-start-from-seat = Arrancar solo desde el asiento
# en: 76cccf4e
hazard-start-from-seat-caution = Arranque solo desde el asiento con la llave; con cuerda, solo en suelo firme. Punto muerto, freno echado, toma de fuerza desconectada. Nadie cerca, debajo ni detrás de la máquina. No puentee nunca el motor de arranque.
# en: 8920b987
hazard-start-from-seat-safe-1 = quien la maneja, en el asiento
# en: 3013cce2
hazard-start-from-seat-safe-2 = punto muerto
# en: dbc483d7
hazard-start-from-seat-safe-3 = freno de mano echado
# en: f36e200d
hazard-start-from-seat-safe-4 = toma de fuerza desconectada
# en: 395c740c
hazard-start-from-seat-safe-5 = nadie cerca
# en: 4c3a4e4a
hazard-cranking = El motor puede girar
# en: 9f86fdc7
hazard-cranking-caution = Manos, mangas y herramientas lejos de correas, ventilador y cuchillas siempre que se gire la llave o se tire de la cuerda. Como mucho 15 segundos de llave cada intento, luego dos minutos de descanso.
# en: 521ab6bc
hazard-cranking-safe-1 = manos lejos de ventilador y correas
# en: 42b1e336
hazard-cranking-safe-2 = ruedas calzadas
# en: afad42c9
hazard-live-measuring = Medir con la llave en START
# en: e515fcd8
hazard-live-measuring-caution = Ruedas calzadas, transmisión desconectada, toma de fuerza desconectada. Ponga las pinzas del tester antes de girar la llave y apártese de las ruedas.
# en: 42b1e336
hazard-live-measuring-safe-1 = ruedas calzadas
# en: f6c76a2f
hazard-live-measuring-safe-2 = transmisión desconectada
# en: f36e200d
hazard-live-measuring-safe-3 = toma de fuerza desconectada
# en: 0765eb4c
hazard-live-measuring-safe-4 = pinzas del tester puestas
# en: dccf5bd9
hazard-hot-parts = Piezas calientes
# en: 9b8432bc
hazard-hot-parts-caution = El escape, el motor y un cable por el que ha pasado la corriente de arranque pueden quemar. No toque nada que huela a quemado.
# en: 1cd7ff7f
hazard-hot-parts-safe-1 = motor frío
# en: 5a31a810
hazard-battery-gas = Gas explosivo en la batería
# en: b9ee3a06
hazard-battery-gas-caution = Una batería suelta gas que explota. Sin llamas, sin fumar y sin chispas cerca; gafas de protección; al aire libre o con las puertas abiertas.
# en: abd53d4a
hazard-battery-gas-safe-1 = sin llamas y sin fumar
# en: badb3559
hazard-battery-gas-safe-2 = gafas de protección
# en: c1331a3d
hazard-battery-gas-safe-3 = aire fresco
# en: a9dcf5d4
hazard-battery-acid = Ácido de la batería
# en: 4a2cf622
hazard-battery-acid-caution = El ácido de la batería quema. Gafas de protección y guantes. En la piel o los ojos, lave con agua 30 minutos y busque un médico.
# en: badb3559
hazard-battery-acid-safe-1 = gafas de protección
# en: 0e376c13
hazard-battery-acid-safe-2 = guantes
# en: 5ae5abc7
hazard-battery-acid-safe-3 = agua a mano
# en: 9a502032
hazard-battery-order = Primero el cable de masa
# en: bc3479f2
hazard-battery-order-caution = Quite primero el cable de masa de la batería y póngalo el último, y que ninguna herramienta toque los dos bornes.
# en: 90738802
hazard-battery-order-safe-1 = cable de masa fuera primero
# en: 377d0b3b
hazard-frozen-battery = Batería helada o dañada
# en: 7f1c0aee
hazard-frozen-battery-caution = No cargue nunca ni arranque con pinzas una batería que pueda estar helada, rajada, hinchada, que pierda o esté caliente, ni una de litio por debajo de cero grados.
# en: 9d0358c1
hazard-frozen-battery-safe-1 = batería deshelada
# en: afe5c908
hazard-frozen-battery-safe-2 = entera y seca
# en: 14c724c9
hazard-jump-start = Pinzas en el orden bueno
# en: 788e5e5a
hazard-jump-start-caution = Solo con la misma tensión, solo con masa en el negativo. Diga los polos en voz alta: positivo de la descargada, positivo de la buena, negativo de la buena, última pinza en metal limpio del motor lejos de la batería descargada. Se quitan en el orden contrario.
# en: fa8846c2
hazard-jump-start-safe-1 = misma tensión
# en: 81b5416d
hazard-jump-start-safe-2 = polos dichos en voz alta
# en: cecd9f6f
hazard-jump-start-safe-3 = última pinza lejos de la batería
# en: e6a3954c
hazard-petrol-vapour = Vapor de gasolina
# en: c0554e47
hazard-petrol-vapour-caution = El vapor de gasolina arde al momento. Motor frío, al aire libre, sin llamas, sin fumar, sin chispas; seque lo derramado antes de conectar nada.
# en: c7cce748
hazard-petrol-vapour-safe-1 = motor frío
# en: bc722fdb
hazard-petrol-vapour-safe-2 = al aire libre
# en: ac44db49
hazard-petrol-vapour-safe-3 = sin llamas
# en: 9dad3476
hazard-fuel-pressure = Combustible a presión
# en: 06049721
hazard-fuel-pressure-caution = El gasoil a presión atraviesa la piel sin que se note. No busque nunca una fuga con la mano; use un cartón, con el motor parado. Con un pinchazo, al hospital ahora mismo.
# en: 6d3da880
hazard-fuel-pressure-safe-1 = motor parado
# en: 1355d6bd
hazard-fuel-pressure-safe-2 = presión quitada
# en: 5969b3d7
hazard-fuel-pressure-safe-3 = gafas y guantes
# en: 04de0e00
hazard-ignition-shock = Alta tensión del encendido
# en: 8851f2f3
hazard-ignition-shock-caution = La tensión del encendido puede tirarle al suelo. No sujete ningún cable con la mano mientras gira el motor; use un probador, lejos de la gasolina.
# en: b89f1072
hazard-ignition-shock-safe-1 = sin vapor de gasolina
# en: 8c2af925
hazard-ignition-shock-safe-2 = cables sin sujetar con la mano
# en: 359d119f
hazard-engine-fumes = Humo del escape
# en: 2ddf904e
hazard-engine-fumes-caution = El gas del escape mata sin oler. Motor en marcha solo al aire libre; pare al primer dolor de cabeza.
# en: bc722fdb
hazard-engine-fumes-safe-1 = al aire libre
# en: 425add8b
hazard-ether = Espray de arranque
# en: 5a7b80e5
hazard-ether-caution = Nada de espray de arranque en un motor con calentadores o calefactor de admisión, y el cliente no lo usa en ningún caso.
# en: 09e08aa9
hazard-ether-safe-1 = sin espray de arranque
# en: 993eb9d2
hazard-lifted-machine = Máquina levantada
# en: 4fc10f6f
hazard-lifted-machine-caution = No meta nunca el cuerpo ni la mano debajo de una máquina que solo sujeta un gato o su hidráulico. Borriquetas debajo, ruedas calzadas.
# en: ba37d3b1
hazard-lifted-machine-safe-1 = máquina sobre borriquetas
# en: 42b1e336
hazard-lifted-machine-safe-2 = ruedas calzadas
# en: b87282fc
hazard-blades = Cuchillas y correas
# en: 2ea033d0
hazard-blades-caution = Cuchillas desconectadas, llave quitada y cable de bujía fuera antes de acercar una mano al plato de corte o a una correa.
# en: 235bafa2
hazard-blades-safe-1 = cuchillas desconectadas
# en: a018d5c5
hazard-blades-safe-2 = llave quitada
# en: 733ebbd3
hazard-gas-leak = Combustible gas
# en: bb9e534a
hazard-gas-leak-caution = El gas de botella pesa más que el aire y explota. Solo al aire libre, sin llamas, sin chispas, sin fumar; si huele a gas, cierre la botella y aléjese.
# en: bc722fdb
hazard-gas-leak-safe-1 = al aire libre
# en: 148b2c5d
hazard-gas-leak-safe-2 = botella cerrada antes de abrir una unión
# en: ac44db49
hazard-gas-leak-safe-3 = sin llamas

## Señales de alarma

# en: dc02782f
flag-fire-or-injury = Hay un herido o algo arde
# en: 0c576298
flag-fire-or-injury-say = Aparte a todo el mundo y llame ahora al número de emergencias.
# en: 74d46370
flag-fuel-leak = Olor a combustible o charco
# en: 1571f14d
flag-fuel-leak-say = No gire la llave. Todos lejos, sin llamas, sin fumar. Cierre la llave de paso solo si llega sin pisar combustible. Le llamamos nosotros.
# en: c6b0306e
flag-smoke-or-hot-wires = Humo, cables calientes o tamo que humea
# en: 2cdeb03d
flag-smoke-or-hot-wires-say = Quite la llave. Desconecte el cortacorrientes si la máquina lo tiene y puede llegar sin peligro. Tenga un extintor a mano y no se acerque a la batería.
# en: 5c639cf4
flag-battery-damaged = Batería hinchada, rajada, que pierde, silba o está caliente
# en: ad48686d
flag-battery-damaged-say = Apártese de la batería, sin llamas, sin cargar, sin pinzas. Va un mecánico.
# en: 2f95ff64
flag-battery-frozen = La batería puede estar helada
# en: a4fe12e8
flag-battery-frozen-say = No la cargue ni la arranque con pinzas. Una batería helada puede reventar. Va un mecánico.
# en: 3725e984
flag-battery-spark = Chispa grande al conectar la batería
# en: f87a21a7
flag-battery-spark-say = Deje el cable suelto y no lo vuelva a probar. Gafas de protección, sin llamas, no se acerque a la batería. Hay un cortocircuito; primero lo mide un mecánico.
# en: 2696195c
flag-lithium-cold = Batería de litio por debajo de cero
# en: 302fb678
flag-lithium-cold-say = No la cargue ni la arranque con pinzas. Llévela primero a un sitio caliente y déjela allí unas horas.
# en: a2f6235d
flag-leads-reversed = Pinzas o batería puestas al revés
# en: 85ae58d5
flag-leads-reversed-say = Déjelo todo apagado. No intente arrancar. Apunte qué se conectó y cuánto tiempo.
# en: 89cdffe3
flag-wrong-fluid = Líquido equivocado en un depósito
# en: 4ab39ea4
flag-wrong-fluid-say = No gire la llave, ni siquiera a contacto. Primero hay que vaciar el depósito.
# en: b7a56cdc
flag-water-in-engine = La máquina estuvo bajo el agua, o hay agua en el motor
# en: 65733536
flag-water-in-engine-say = No le dé al arranque. Un motor lleno de agua se rompe al girarlo.
# en: 91cf6287
flag-will-not-stop = El motor de arranque o el motor no para
# en: ac607d19
flag-will-not-stop-say = Quite la llave, saque el tirador de paro, cierre la llave de paso. Desconecte el cortacorrientes. Si no tiene: con guantes y gafas de protección saque el terminal de masa, con la cara apartada, solo si llega lejos de correas y ventilador y nada echa humo ni silba. Si no, apártese y llámenos.
# en: e34b52b0
flag-interlock-bridged = Han puenteado un interruptor de seguridad
# en: df273f8c
flag-interlock-bridged-say = No la arranque así. Díganos qué interruptor; un mecánico lo arregla.
# en: e73b19ce
flag-raised-load = Hay algo levantado encima de alguien
# en: 7571095f
flag-raised-load-say = Nadie se mete debajo. Bájelo solo con su propia palanca si el manual lo permite; si no, apártese.
# en: 8d457086
flag-bad-place = En una cuesta, una carretera o un paso a nivel
# en: 9dd20b90
flag-bad-place-say = Eche el freno, calce las ruedas, todos fuera del lado de la carretera. No trabaje aquí en la máquina; avise al tráfico.
# en: c900dbc5
flag-ether-sprayed = Se echó espray de arranque
# en: 2bb56e85
flag-ether-sprayed-say = No precaliente y no eche más. Espere media hora con el capó abierto.
# en: 35762c86
flag-alone-and-far = Está solo y nadie sabe dónde
# en: 298cb6cb
flag-alone-and-far-say = Dígale a alguien dónde está antes de hacer nada con las manos.
# en: fd6caa75
flag-nest-or-chaff = Nido o tamo seco junto al motor o el escape
# en: fba56a5a
flag-nest-or-chaff-say = No la arranque. Quite la llave, deje que se enfríe y luego saque el nido o el tamo con guantes. Busque cables roídos y díganos qué ve.
# en: beaa4ca8
flag-somebody-too-near = Alguien debajo, dentro o muy cerca de la máquina
# en: 247ac778
flag-somebody-too-near-say = Quite la llave y llévela encima. No se gira ni se prueba nada hasta que estén todos apartados y a la vista.

## Herramientas

# en: f2810fae
tool-meter = Tester (multímetro)
# en: 36cb6b08
tool-test-lamp = Lámpara de prueba
# en: 771885c7
tool-clamp-meter = Pinza amperimétrica de continua
# en: 58791177
tool-load-tester = Probador de baterías bajo carga
# en: 24157bdf
tool-hydrometer = Densímetro
# en: 5ab66c61
tool-charger = Cargador de baterías
# en: 5c8dae9e
tool-leads = Pinzas de arranque
# en: d365337a
tool-jump-pack = Arrancador portátil
# en: 36200cf9
tool-second-person = Otra persona
# en: f17b42ed
tool-camera = Un teléfono con cámara
# en: ac6dd42c
tool-hand-tools = Llaves y destornilladores
# en: c369fd67
tool-wire-brush = Cepillo de alambre y grasa de contactos
# en: c0c325e9
tool-spark-tester = Probador de chispa
# en: 4c0ae5c7
tool-compression-gauge = Compresímetro
# en: cd37f80f
tool-clear-jar = Tarro transparente
# en: 6200d44d
tool-fuel-gauge = Manómetro de combustible
# en: 609e1e70
tool-wheel-chocks = Calzos de rueda
# en: dcc578ac
tool-torch = Linterna
# en: 468c778d
tool-cleaning-spray = Aerosol limpiador
# en: 72881750
tool-hand-pump = Bomba de trasiego y bidón
# en: fdee8b32
tool-feeler-gauges = Galgas
# en: f38ff810
tool-leak-down-tester = Aparato de fugas de cilindro y aire
# en: 6e7ff113
tool-code-reader = Aparato de diagnosis del fabricante

## Accesos

# en: 0a83e32a
access-battery-cover = Tapa de la batería o asiento levantado
# en: 264cba3c
access-bonnet = Capó abierto
# en: 1c303faa
access-dash-panel = Panel del cuadro fuera
# en: f734171c
access-under-machine = Llegar al motor de arranque por debajo
# en: c0cb5f57
access-starter-off = Motor de arranque quitado
# en: 182b2760
access-starter-open = Motor de arranque desmontado
# en: 8a369fa7
access-plug-out = Bujía fuera
# en: dcca38ba
access-fuel-line-open = Tubo de combustible abierto
# en: 3e522349
access-carburettor-off = Carburador quitado
# en: b52425e5
access-injector-line-open = Tubo de inyector aflojado
# en: 9dc09ac8
access-flywheel-cover = Carcasa del ventilador y tapa del volante fuera
# en: 3a565bc6
access-glow-plug-rail = Pletina de calentadores suelta

## Sistemas

# en: b05e7732
system-air-and-exhaust = Admisión de aire y escape
# en: dfcb7c16
system-battery = Batería
# en: dbd3bcb9
system-cables-and-earth = Cables gordos y masa
# en: e364cccf
system-carburettor = Carburador
# en: 22b69322
system-charging = Carga
# en: 3df7df9e
system-choke = Mando de estárter y acelerador
# en: 8404cd6a
system-clamps = Terminales de batería
# en: 4a11415d
system-compression = Compresión y válvulas
# en: 6365aa46
system-control-positions = Mandos fuera de la posición de arranque
# en: ab19acb1
system-decompressor = Descompresor y holgura de válvulas
# en: 55cbc7d6
system-diesel-cold = Gasoil con helada
# en: e974c2e9
system-diesel-fuel = Llegada del gasoil
# en: 73b4d890
system-electronics = Inmovilizador, centralita, urea
# en: 7d00884b
system-engine-drag = Motor duro de girar
# en: 1c29b64c
system-engine-load = Lo que gira a la vez que el motor
# en: 86468ff9
system-flooding = Motor ahogado
# en: 7111f9a2
system-fuel-tank = Depósito, llave de paso y respiradero
# en: 4e229d53
system-fuel-valve = Electroválvula del carburador
# en: 23aca891
system-fuses = Fusibles y fusibles de cable
# en: 733ebbd3
system-gas-fuel = Combustible gas
# en: 7cd84b15
system-hand-back = Antes de devolver la máquina
# en: 8c485b07
system-ignition-points = Platinos, distribuidor y magneto
# en: d2fb940c
system-ignition-stop = Paro y alimentación del encendido
# en: a3cb1e65
system-ignition-timing = Punto del encendido
# en: ae1c3280
system-ignition = Encendido
# en: d30070c6
system-injection = Inyección diésel
# en: 31e907e0
system-interlock-switches = Interruptores de seguridad
# en: 5f01b660
system-key-run = Llave de contacto, posición de marcha
# en: 27723f15
system-key-switch = Llave de contacto
# en: 4bd208b9
system-petrol-fuel = Llegada de la gasolina
# en: 5cbeeb37
system-petrol-heat = Gasolina y calor
# en: a21139f3
system-petrol-injection = Inyección de gasolina
# en: d652df81
system-preheat = Precalentamiento
# en: b027ea27
system-recent-fuel-work = Después de trabajar en el combustible
# en: 8b62048a
system-relay-and-solenoid = Relé de arranque, solenoide, contactor
# en: 2d634003
system-shut-downs = Paros por aceite bajo y vuelco
# en: e419c53a
system-standing-drain = Consumo en parado
# en: 4a0af6c2
system-start-wiring = Cables del circuito de arranque
# en: 84b87089
system-starter-drive = Bendix y corona
# en: 3863247f
system-starter-motor = Motor de arranque
# en: a60e1506
system-stop-control = Mando de paro del diésel
# en: 017bfb87
system-two-batteries-and-isolator = Dos baterías, cortacorrientes, litio

## Equipamiento

# en: 449d4383
feature-electric-start = Motor de arranque eléctrico
# en: d283afbf
feature-recoil-start = Arranque con cuerda
# en: 556b2051
feature-contactor = Contactor aparte del motor de arranque
# en: f1d95962
feature-start-relay = Relé de arranque
# en: 53ea04d5
feature-seat-switch = Interruptor del asiento
# en: c43ef872
feature-clutch-switch = Interruptor del embrague
# en: 8781541a
feature-brake-switch = Interruptor del freno
# en: b9f0476f
feature-neutral-switch = Interruptor de punto muerto
# en: 803ab9f1
feature-pto-switch = Interruptor de toma de fuerza o cuchillas
# en: 6cf749fa
feature-pto = Toma de fuerza o cuchillas
# en: 9c6cd0d2
feature-lever-bar = Barra de seguridad o palanca de hombre muerto
# en: 4bb64660
feature-isolator = Cortacorrientes
# en: 0cd08b1e
feature-emergency-stop = Seta de parada de emergencia
# en: 8a933ea3
feature-two-batteries = Dos baterías
# en: ba471c6c
feature-lights = Luces o testigos
# en: 322babc7
feature-display = Pantalla con códigos o voltios
# en: 848c6c07
feature-charging = Alternador, dinamo o bobina de carga
# en: 3950d83d
feature-fan-belt = Alternador o dinamo con correa
# en: 5c4bb842
feature-immobiliser = Inmovilizador o bloqueo con PIN
# en: 6de13ebc
feature-controller = Centralita electrónica
# en: 7a8c54cf
feature-exhaust-fluid = Sistema de urea
# en: aa34bc76
feature-tilt-stop = Paro por vuelco
# en: e364cccf
feature-carburettor = Carburador
# en: 66796116
feature-choke = Estárter
# en: 3e2ffd59
feature-fuel-tap = Llave de paso
# en: a5a67886
feature-fuel-solenoid = Electroválvula de combustible en el carburador
# en: f2f0dd02
feature-fuel-pump = Bomba de combustible
# en: 1cc8f3ab
feature-magneto-ignition = Encendido por magneto
# en: d428b0f7
feature-points = Platinos
# en: c6599450
feature-glow-plugs = Calentadores o calefactor de admisión
# en: c63769d1
feature-stop-solenoid = Solenoide de paro eléctrico
# en: 8fdb703f
feature-stop-knob = Tirador de paro
# en: 22f2a4f8
feature-decompressor = Descompresor automático
# en: 712d6509
feature-low-oil-stop = Paro por aceite bajo
# en: e55d3640
feature-hydrostatic = Transmisión hidrostática
# en: fac175fa
feature-electric-fuel-pump = Bomba eléctrica de combustible
# en: 30634f30
feature-electronic-injection = Inyección electrónica (common rail o gasolina)
# en: d8e73763
feature-hand-primer = Bomba de mano en el filtro de gasoil o en la bomba
# en: 44ff34a1
feature-fuel-bowl = Vaso transparente debajo del filtro
# en: 0d31059d
feature-coil-ignition = Bobina alimentada por la batería
# en: 08e37599
feature-engine-switch = Interruptor de paro en el motor o el manillar

## Prisa

# en: d38e778d
rule-said-urgent = El cliente dice que no puede esperar.
# en: 6b46dd19
rule-said-no-hurry = El cliente dice que no corre prisa.
# en: c0f5d51f
rule-in-danger = La máquina es un peligro donde está.
# en: f8dff70a
rule-alone = Alguien está solo con ella.
# en: cd488950
rule-grain-harvest = Una cosechadora está parada en plena cosecha.
# en: b859d02f
rule-forage-harvest = Una máquina de cosecha está parada en su temporada.
# en: c4146695
rule-spraying = Los días para pulverizar son pocos.
# en: a8b21b40
rule-field-work = Es la época de las labores del campo.
# en: ceac31e7
rule-feeding = Una cargadora suele dar de comer a los animales todos los días.
# en: 3b49c7fb
rule-winter-feeding = En invierno los animales están dentro y se les da de comer con máquina.
# en: b40d42ec
rule-pump-or-power = Puede depender de ella el agua o la corriente.
# en: d557f2c8
rule-collector = Un tractor viejo pocas veces es el único.
# en: 6cb3b0e1
rule-came-back = La misma avería ha vuelto después de nuestro trabajo.
# en: 2a581b23
rule-half-a-day = El cliente lleva medio día esperando.
# en: 3c973c3f
rule-a-day = El cliente lleva un día o más esperando.

## Máquinas

# en: b1fb254d
machine-atv = Quad o vehículo de faena
# en: ebdad9ba
machine-others-family = Otras
# en: 31359b08
machine-backhoe-loader = Retroexcavadora mixta o excavadora
# en: 1c3d5bbe
machine-loaders-family = Cargadoras
# en: 35843e7a
machine-combine = Cosechadora
# en: c91ab8b6
machine-harvest-family = Cosecha
# en: 0aaeabf4
machine-compact-tractor = Tractor compacto
# en: c5fe20e6
machine-tractors-family = Tractores
# en: 6b1cb2bd
machine-garden-tractor = Tractor de jardín
# en: ae9b6a49
machine-mowers-family = Cortacéspedes
# en: 1e2b9cce
machine-harvester = Otra máquina de cosecha
# en: af98f1f9
machine-old-tractor = Tractor viejo o antiguo
# en: e4873b72
machine-other = Otra máquina
# en: a156b9d0
machine-pump-or-generator = Bomba o generador
# en: 288716f1
machine-ride-on-mower = Cortacésped de asiento
# en: 82f18357
machine-row-crop-tractor = Tractor grande
# en: 6ab3d0b3
machine-skid-steer = Minicargadora de ruedas o cadenas
# en: 67c9b3a3
machine-sprayer = Pulverizador autopropulsado
# en: 4bc03b43
machine-telehandler = Manipulador telescópico
# en: f46aa8c6
machine-utility-tractor = Tractor hasta unos 120 CV
# en: 0f69172e
machine-walk-behind = Máquina de mano (motocultor, segadora)
# en: 6ac9c756
machine-zero-turn = Cortacésped de giro cero
# en: 5a281bf1
observation-made-it-go = Qué la hizo arrancar al final
# en: c3636fc1
state-made-it-go-key-wiggled = Mover la llave de un lado a otro
# en: 8e029b23
state-made-it-go-control-worked = Mover palanca, pedal o asiento
# en: 3c42b2de
state-made-it-go-leads-moved = Mover un cable o borne de la batería
# en: 9bb8ee07
state-made-it-go-wires-moved = Mover un fusible, enchufe o cables
# en: 499dfa06
state-made-it-go-starter-knocked = Un golpe cerca del arranque
# en: d9056b44
state-made-it-go-engine-turned = Girar un poco el motor
# en: 767f7091
state-made-it-go-many-tries = Dar a la llave muchas veces
# en: 099b6f64
state-made-it-go-rested = Dejarla quieta un rato
# en: af2e80ff
state-made-it-go-primer-pumped = Bombear con la bomba de mano
# en: 5a281bf1
check-ask-made-it-go = Qué la hizo arrancar al final
# en: d823a36e
check-ask-made-it-go-ask = ¿Hubo algo que la hiciera arrancar al final, esta vez u otra?
# en: b4dd980c
check-ask-made-it-go-how = Diga solo lo que ya se hizo. Por favor, no pruebe nada nuevo.
# en: 9f868ab2
state-recent-work-lever-work = Asiento, pedales o palancas
# en: b84c6bc2
observation-plus-side-drop-volts = Voltios del borne positivo al perno del solenoide, START
# en: 37a52a73
state-plus-side-drop-volts-good = Menos de 0,4 V
# en: 18d09ec8
state-plus-side-drop-volts-look-into = De 0,4 a 0,8 V
# en: aa8edfd3
state-plus-side-drop-volts-bad = Más de 0,8 V
# en: 188cd1e0
check-read-plus-side = Lado positivo al arrancar
# en: dec86994
check-read-plus-side-ask = ¿Cuántos voltios hay del borne positivo al perno de batería del solenoide, con la llave en START?
# en: ca7626a6
check-read-plus-side-how = Rojo en el poste de plomo, negro en el perno mismo. Después unión por unión (abrazadera, puente, desconectador, cable, tuerca): dónde se pierden los voltios.
# en: d2e6fad4
verdict-read-plus-side-sound = Lado positivo en orden.
# en: 7f06eb8b
verdict-read-plus-side-between = Aquí difieren las fuentes, de 0,4 V a unos 0,8 V: mida abrazadera y cable por separado.
# en: ec95003f
verdict-read-plus-side-faulty = Lado positivo mal: abrazadera, desconectador, cable o la tuerca del perno.
# en: 668fa3da
verdict-read-charging-cold-now = Correcto para este frío: unos 0,1 V más por cada 10 grados.
# en: e68dc44e
verdict-read-charging-warm-now = Demasiado sin helada: regulador o su masa.
# en: 9e2b84f1
verdict-ask-oil-grade-fits-hard-frost = Un 0W arranca hasta -35 grados, un 5W hasta -30: con este frío el aceite no es el motivo.
# en: 564951ef
verdict-ask-oil-grade-limit-in-frost = Un 10W arranca hasta -25 grados, un 15W hasta -20: con una helada tan fuerte puede ser demasiado espeso.
# en: 124309dd
verdict-ask-oil-grade-fits-light-frost = Un 10W arranca hasta -25 grados, un 15W hasta -20: con esta helada no es demasiado espeso.
# en: cbf6ed91
verdict-ask-oil-grade-no-matter = Sin helada ningún grado es demasiado espeso para arrancar.
# en: 6bf98336
verdict-ask-fuel-grade-waxes-surely = El gasóleo de verano deja de filtrarse entre +5 y -10 grados: con esta helada ha soltado parafina.
# en: aa851ff5
verdict-ask-fuel-grade-edge = El gasóleo de invierno se filtra hasta -15 o -20 grados: con una helada tan fuerte busque parafina de todos modos.
# en: d38178a7
verdict-ask-fuel-grade-no-matter = Por encima de +5 grados cualquier gasóleo fluye.
# en: 54451818
verdict-read-load-volts-worn-when-warm = Menos de 9,6 V a partir de 20 grados: gastada si estaba cargada; si no, cárguela y repita la prueba. La mitad o el doble a 6 o 24 V.
# en: a27470c5
verdict-read-amps-low-but-slow = Poca corriente y despacio: resistencia. Mida los voltios que se pierden en cada unión y cable.
# en: a87d005c
verdict-read-amps-low-and-still = Poca corriente y no gira: contactos quemados, escobillas gastadas o una mala unión.
# en: d0abbb7d
verdict-read-amps-low-and-turning = Poca corriente y buena velocidad: motor pequeño, circuito de arranque sano. También pasa con poca compresión.
# en: 1b607763
verdict-read-amps-low-and-alone = Poca corriente, el motor de arranque gira solo: el bendix no engrana.
# en: 70cd1853
verdict-read-amps-usual-but-slow = Corriente normal pero despacio: batería floja, aceite frío o una unión que empieza a fallar. Mida los voltios de la batería.
# en: d6393742
verdict-read-amps-usual-and-still = Pasa corriente y no gira: batería floja o un motor que frena. Voltios de la batería y después la barra.
# en: 05ac1b7f
verdict-read-amps-usual-and-turning = Corriente y velocidad normales: el circuito de arranque está bien. Mire combustible, chispa y aire.
# en: 901be34b
verdict-read-amps-high-and-slow = Mucha corriente y despacio: aceite espeso, motor duro, o un motor de arranque que roza o está en corto.
# en: a625153b
verdict-read-amps-high-and-still = Mucha corriente y no gira: motor bloqueado o motor de arranque trabado. Pare, gírelo con una barra y piense en líquido en un cilindro.
# en: 2d692f10
verdict-read-amps-high-and-turning = Mucha corriente a buena velocidad: motor grande, o la pinza midió también otro consumo.
# en: c53c343b
act-jump-start-not-other-volts = Aquí no se arranca con cables: no es una máquina de 12 voltios. El taller trae lo que corresponde.
# en: be43fb30
act-jump-start-not-plus-on-frame = Aquí no se arranca con cables: el polo positivo va al chasis y los cables, puestos como siempre, harían un cortocircuito. Déjelo al taller.
# en: 0a42996c
act-jump-start-not-electronics = Aquí no se arranca con cables: puede dañar una máquina con tanta electrónica. El taller lo hace según el manual.
# en: 2cb2da93
act-jump-start-not-lithium = Aquí no se arranca con cables: la batería es de litio.
# en: e2c726d1
act-jump-start-not-hard-frost = Con helada fuerte no se arranca con cables: una batería descargada puede estar congelada y reventar. Antes hay que revisarla.
# en: 6115c1ab
act-charge-battery-not-lithium = No la cargue con un cargador para baterías de plomo: una de litio necesita el suyo.
# en: 4a73bf8a
act-charge-battery-not-hard-frost = Con helada fuerte no se carga: una batería descargada puede estar congelada y reventar. Antes hay que revisarla.
# en: b1f30731
feature-positive-earth = Polo positivo al chasis

## Esquema

# en: f3d1701e
circuit-battery = batería

# en: f7994fcd
circuit-plus-clamp = terminal positivo

# en: db62a978
circuit-plus-cable = cable positivo

# en: 42de5ac5
circuit-live-cable = cable al arranque

# en: 79fa068f
circuit-minus-clamp = terminal negativo

# en: 34ddaaa6
circuit-earth-strap = trenza de masa

# en: 1d768c14
circuit-small-earth = masa pequeña

# en: 04e2face
circuit-feed-wire = cable de entrada

# en: 6950e118
circuit-main-fuse = fusible principal

# en: 707c2e01
circuit-key-wire = cable a la llave

# en: e3bcb449
circuit-key-supply = entrada de la llave

# en: 7996447b
circuit-key-on = llave ON

# en: d9605aeb
circuit-key-start = llave START

# en: dfe0b81f
circuit-lamps = luces

# en: fb137b42
circuit-contactor-coil = bobina del contactor

# en: a9b40a34
circuit-contactor = contactor

# en: d80b4fea
circuit-starter-cable = cable del arranque

# en: 4ff99612
circuit-starter = motor de arranque

# en: 9b2abfc2
circuit-wire = cable

# en: 6be95fb5
circuit-brake-switch = interruptor del freno

# en: 68e8bc12
circuit-start-wire = cable START

# en: e133ac17
circuit-relay-coil = bobina del relé

# en: 83cf6a4d
circuit-start-relay = relé de arranque

# en: 41fca1f4
circuit-solenoid-wire = cable al solenoide

# en: 707d808d
circuit-pull-in-winding = bobinado de llamada

# en: 39d058b8
circuit-hold-in-winding = bobinado de retención

# en: ea484158
circuit-solenoid-contact = contacto del solenoide

# en: 145fd423
circuit-isolator = corta- corrientes

# en: adb6ff12
circuit-neutral-switch = interruptor de punto muerto

# en: 26861a35
circuit-second-battery = segunda batería

# en: 2478d627
circuit-series-link = puente en serie

# en: b6234fb8
circuit-plus-link = puente positivo

# en: b99f6d36
circuit-minus-link = puente negativo

# en: 377c6838
circuit-clutch-switch = interruptor del embrague

# en: d0767e8e
circuit-pto-switch = interruptor de la toma de fuerza

# en: 05eba9a5
circuit-seat-switch = interruptor del asiento

# en: 9ce552ab
act-extra-earth-lead = Un cable de masa de más

# en: f6acf7cb
act-extra-earth-lead-ask = Llave quitada, un buen cable de arranque del borne de masa de la batería a metal limpio del bloque del motor. Luego arranque desde el asiento. ¿Qué pasa?

# en: c378364d
act-extra-earth-lead-how = Primero la pinza al bloque y por último al borne, lejos de las tuberías de combustible y de todo lo que gira. Quítelo tras la prueba: encuentra una mala masa, no la arregla.
# en: 580d37ff
observation-started-by = Cómo se arranca
# en: 56eb7bba
state-started-by-key = Con llave o botón
# en: 5536571d
state-started-by-cord = Tirando de la cuerda
# en: e15e4388
state-started-by-both = De las dos maneras
# en: 580d37ff
check-how-started = Cómo se arranca
# en: 0f6be188
check-how-started-ask = ¿Cómo la arranca usted?
# en: f2bf2916
check-hear-pull = Qué pasa al tirar de la cuerda
# en: d895d1a1
check-hear-pull-ask = ¿Qué pasa exactamente cuando tira de la cuerda?
# en: 03c1084d
check-hear-pull-how = Cuente solo lo que vio y oyó la última vez; no hace falta volver a probar.
# en: a73a0d17
menu-hear-pull-does-not-turn = La cuerda no se mueve
# en: 2e17f64c
menu-hear-pull-turns-badly = Va dura o a tirones
# en: f2c4c70b
menu-hear-pull-turns-nothing = La cuerda no mueve el motor
# en: f9889039
menu-hear-pull-turns-well = Sale como siempre
# en: 61b4e70c
check-hear-try = Qué pasa al intentar arrancarla

# en: 08532a96
check-hear-try-ask = ¿Qué pasa exactamente cuando intenta arrancarla?

# en: 03c1084d
check-hear-try-how = Cuente solo lo que vio y oyó la última vez; no hace falta volver a probar.

# en: 46f07eb9
menu-hear-try-does-not-turn = El motor no gira

# en: 0be75f28
menu-hear-try-turns-badly = Gira mal

# en: 6474c6df
menu-hear-try-turns-well = Gira bien

# en: 2ed665c4
menu-hear-try-will-not-stop = El motor de arranque no para

# en: 61621f68
feature-cord-alone = Cuerda de arranque, sin batería
