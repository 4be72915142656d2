# Todos los textos de la aplicación, en español. Una pieza es una pechuga.

## Names and small words
piece = Pieza { $number }
pieces = Piezas { $numbers }
unit-f = °F
unit-c = °C
unit-g = g
unit-oz = oz
unit-mm = mm
unit-in = in
minutes = { $count } min
hours-minutes = { $hours } h { $minutes } min
ago = hace { $span }
just-now = ahora mismo
list-and = { $first } y { $last }
back = Volver
undo = Deshacer
change = Cambiar
today = Hoy
tomorrow = Mañana

## Stages
stage-raw = Cruda
stage-resting = En reposo, sin comprobar
stage-proved = Comprobada
stage-packed = Servida o envasada

## Tabs
tabs = Partes de la aplicación
tab-cook = Asado
tab-rest = Reposo
tab-log = Diario
tab-more = Más

## Start
start-title = Pull Order
start-lead = Cada pechuga tiene su momento. Prepáralas, escribe lo que marca tu termómetro y retira cada una a su hora.
start-new = Nuevo asado
start-continue = Seguir con este asado
start-earlier = Asados anteriores
start-caution = Un pronóstico nunca demuestra que el pollo es seguro. Solo lo hace tu termómetro.
cook-begun = Asado del { $when }

## Set-out
set-out-title = Preparar
set-out-add-title = Añadir piezas
set-out-count = Cuántas iguales
set-out-count-less = Una menos
set-out-count-more = Una más
set-out-weight = Peso de cada una ({ $unit })
set-out-thickest = Parte más gruesa ({ $unit })
set-out-thickest-hint = Altura tal como está puesta. Déjalo vacío si no la mediste; medida, el pronóstico es mucho mejor.
set-out-start = Temperatura al entrar ({ $unit })
set-out-shape = Corte
shape-natural = Natural
shape-even = Aplanada
shape-thick = Muy gruesa
set-out-add = { $count ->
    [one] Añadir 1 pieza
   *[other] Añadir { $count } piezas
 }
set-out-remove = Quitar { $piece }
set-out-facts = { $weight }, { $thickest } de grueso
set-out-facts-weight = { $weight }
set-out-cook-title = Este asado
set-out-pit = Ahumador en la parrilla ({ $unit })
set-out-pull = Retirar a ({ $unit })
set-out-pull-hint = Antes de 74 °C (165 °F): el centro sube todavía un poco al retirar.
set-out-ambient = Aire donde reposa ({ $unit })
set-out-dinner = Cena a las
set-out-dinner-clear = Sin hora fija
set-out-put-on = { $count ->
    [one] Poner la pieza
   *[other] Poner las { $count }
 }
set-out-units = Unidades
units-customary = °F · oz · in
units-metric = °C · g · mm
set-out-wash = Lávate las manos y lava la tabla y el termómetro después de tocar pollo crudo.

## Messages beside a field
bad-blank = Todavía no hay nada escrito. Escribe un número como { $example }.
bad-number = Esto no es un número. Escribe cifras, con un punto o una coma decimal como mucho, por ejemplo { $example }.
bad-comma = 1,234 se puede leer de dos maneras. Escribe 1234 o 1.234.
bad-range = Se acepta entre { $low } y { $high }.
bad-dinner-past = Las { $time } de hoy ya han pasado. Elige una hora más tarde, o Mañana.
bad-dinner-blank = Elige una hora, o Sin hora fija.
bad-not-on = { $piece } todavía no está en el ahumador. Ponla primero; lo que escribiste se queda aquí.
bad-packed = { $piece } está servida o envasada y ya no admite lecturas. Deshazlo antes en el diario.

## Live cook
live-title = Asado
live-due-now = Ahora
live-all-done = Todas las piezas están servidas o envasadas.
live-order = Orden de retirada
live-off = Fuera del ahumador
live-dinner = Cena { $time }
live-dinner-late = { $span } tarde
live-dinner-early = { $span } antes
live-dinner-on-time = a tiempo
live-no-dinner = Cena sin hora
live-no-dinner-hint = fijarla
live-then = Luego, { $time }: { $what }
live-then-now = Luego: { $what }
live-pit = Ahumador { $temperature }
live-pit-none = Sin leer
live-pit-aim = fijado a { $temperature }
live-core-now = centro ahora, pronóstico
live-core-band = { $low }–{ $high }
live-pull-window = Retirar { $window }
live-pull-far = Aún sin hora de retirada
live-no-reading = Aún sin lectura
live-read-instant = { $temperature }, { $age }
live-read-leave-in = { $temperature } sonda fija, { $age }
live-peak = Máximo de unos { $temperature } a las { $time }
live-proved-by = Comprobada: { $temperature } leídos a las { $time }
live-misplaced = La sonda fija probablemente no está en el punto más frío, a unos { $length } de él.

## What to do next
do-pull = Retira { $pieces }
do-check = Mide { $pieces }
do-cover = Cubre { $pieces } con papel de aluminio flojo
do-second-place = Prueba otro punto en { $pieces }
do-prove = Mide { $pieces } para comprobarla
do-put-back = Vuelve a poner { $pieces }
do-reseat = Recoloca la sonda fija de { $pieces }
do-read-pit = Lee el ahumador
do-put-on = Pon { $pieces }
do-set-out = Prepara las piezas
do-pack = Sirve o envasa { $pieces }

do-out-of-fridge = Saca la carne de la nevera
do-season = Sazona las piezas
do-light-fire = Enciende el fuego
do-feed-fire = Alimenta el fuego

why-chore = Para que la cena esté a su hora.
why-pull = La lectura llegó a la temperatura de retirada.
why-check = Parte más gruesa, la menor de dos lecturas.
why-cover = El papel flojo guarda el calor sin cocer al vapor.
why-second-place = Un solo punto no la comprueba. Cuenta el menor de dos.
why-prove = Cerca del máximo: parte más gruesa, el menor de dos puntos.
why-put-back = El máximo ha pasado y ninguna lectura la comprueba.
why-reseat = Empújala hasta el centro de la parte más gruesa.
why-read-pit = Hace rato que no se lee.
why-put-on = Cruda y preparada.
why-set-out = Pesa cada una.
why-pack = Comprobada por su lectura.

act-read = Medir { $piece }
act-pulled = { $piece } está fuera
act-covered = Cubierto: { $pieces }
act-second-place = El segundo punto no marca menos
act-put-back = { $piece } está puesta otra vez
act-reseated = Sonda recolocada
act-read-pit = Escribir la lectura
act-put-on = Poner { $pieces }
act-set-out = Preparar piezas
act-packed = Servido o envasado: { $pieces }
all-pieces = las { $count }

## Reading pad
pad-title-pit = Ahumador
pad-about = Pronóstico { $temperature }, de { $low } a { $high }
pad-pit-about = Fijado a { $temperature }
pad-instrument = Termómetro
instant-read = Lectura rápida
leave-in = Sonda fija
places-two = Menor de dos
pad-typed = Lectura en { $unit }
pad-store = Guardar lectura
pad-delete = Borrar la última cifra
pad-decimal = Coma decimal
pad-keys = Teclado numérico
ask-reading = { $piece }: ¿{ $typed }? Se esperaban unos { $expected }.
ask-keep = { $typed } es correcto
ask-mend = Escribirla otra vez
pad-pull = Retirar { $piece }
pad-put-on = Poner { $piece }
pad-reseat = Sonda fija colocada aquí

## Plan
plan-title = Plan
plan-no-pieces = Prepara primero al menos una pieza.
plan-no-dinner = Pon una hora para la cena y el día se planea hacia atrás desde ella.
plan-dinner-past = La hora de la cena ya pasó. Pon otra.
plan-never-done = El ahumador está demasiado frío para esta temperatura. Súbelo, o saca antes.
plan-legend = Barra: en el ahumador. Caja: ventana para sacar, cuatro de cada cinco veces. Punto: reposada.
plan-dinner-mark = Cena
plan-now-mark = Ahora
plan-eat = Cena
plan-on = Entra { $piece }
plan-pull = Sale { $piece }, probablemente { $window }
plan-rested = { $piece } ha reposado
plan-ready = Lista { $window }. A las { $time }: { $chance }.
plan-style = Cómo cargar
plan-on-together = Todas entran a la vez
plan-off-together = Todas salen a la vez
plan-cost = Espera { $held } en total · tapa abierta { $openings ->
    [one] una vez
   *[other] { $openings } veces
 } · fuego { $fuel } · a tiempo { $chance }
plan-calendar = Guardar el plan para mi calendario
plan-calendar-hint = El calendario del teléfono suena aunque esta página esté cerrada.
pit-low = El ahumador marca { $temperature } y no se recupera.
pit-high = El ahumador marca { $temperature } y no baja.
pit-recovering = El ahumador marca { $temperature } y se recupera.
pit-settling = El ahumador marca { $temperature } y va bajando.
lever-raise = Subir el ahumador a { $temperature }
lever-lower = Bajar el ahumador a { $temperature }
lever-first = Servir primero { $pieces }
lever-dinner = Comer a las { $time }
lever-sooner = Cena { $span } antes; más seca por fuera
lever-later = Cena { $span } después; menos seca por fuera
lever-first-ready = Esas, listas a las { $time }; a tiempo { $chance }
lever-chance = A tiempo { $chance }
lever-choose = Hacerlo
unit-min = min

## Habits
habits-title = Ahumador, parrilla y tiempos
habits-pit = Tipo de ahumador
pit-indirect = Leña o carbón a un lado
pit-pellet = Pellets con ventilador
pit-gas = Gas a un lado
pit-drum = Tambor vertical
habits-times = Cuánto tarda cada cosa
habits-times-hint = En minutos. Alimentar 0 quiere decir que se alimenta solo.
habits-preheat = De encender a caliente (min)
habits-feed = Alimentar el fuego cada (min)
habits-fridge = Fuera de la nevera antes (min)
habits-season = Sazonar (min)
habits-rest = Reposo con papel de aluminio (min)
habits-carve = Cortar y guarniciones (min)
rack-title = Sitios en la parrilla
rack-any = Cabe todo, y se calienta por igual.
rack-count = { $count ->
    [one] Cabe una pieza.
   *[other] Caben { $count } piezas a la vez.
 } Las demás van por tandas. Toca un sitio que sea más caliente o más frío.
rack-fewer = Un sitio menos
rack-more = Un sitio más
rack-place = { $number }: { $heat }
rack-even = parejo
rack-hot = caliente
rack-cool = frío
tonight-title = Para esta noche
tonight-hint = La cena solo espera a estas. Toca una pieza para cambiarla.
tonight-is = { $piece }: esta noche
tonight-is-not = { $piece }: después

## Rest
rest-title = Reposo
rest-none = Todavía no hay nada fuera del ahumador.
rest-lead = El reposo no comprueba nada. Comprueba una pieza una lectura de { $rule } o más en la parte más gruesa, la menor de dos puntos.
rest-off = Fuera { $age }
rest-covered = cubierta
rest-uncovered = sin cubrir
rest-cover = Cubrir
rest-read = Medir
rest-second = El segundo punto no marca menos
rest-pack = Servida o envasada
rest-put-back = Volver a poner

## Log
log-title = Diario del asado
log-empty = Todavía no ha pasado nada.
log-undo = Deshacer: { $what }
log-bring-back = Recuperar: { $what }
log-bring-back-short = Recuperar
log-undone = Deshecho
log-ignored = No cuenta: { $why }
log-set-aside-title = No se pudo leer
log-set-aside-lead = Estas anotaciones guardadas se conservan como se encontraron y no cambian nada.

entry-pit-target = Ahumador fijado a { $temperature }
entry-ambient = Aire donde reposa { $temperature }
entry-dinner = Cena a las { $time }
entry-dinner-none = Cena sin hora fija
entry-pull-target = Retirar a { $temperature }
entry-pull-target-piece = { $piece }: retirar a { $temperature }
entry-proof-rule = Comprobada a { $temperature }
entry-set-out = { $piece } preparada: { $facts }
entry-taken-away = { $piece } quitada
entry-put-on = En el ahumador: { $piece }
entry-pit-read = El ahumador marca { $temperature }
entry-read-instant = { $piece } marca { $temperature }, lectura rápida
entry-read-leave-in = { $piece } marca { $temperature }, sonda fija
entry-read-two = { $reading }, menor de dos
entry-second-place = El segundo punto no marca menos
entry-second-place-piece = { $piece }: el segundo punto no marca menos
entry-vouched = Lectura dada por correcta
entry-seated = Sonda fija colocada en { $piece }
entry-lid = Tapa abierta { $span }
entry-pulled = Fuera: { $piece }
entry-covered = Cubierto: { $piece }
entry-packed = Servido o envasado: { $piece }
entry-out-of-fridge = La carne está fuera de la nevera
entry-season = Sazonado
entry-light-fire = El fuego está encendido
entry-feed-fire = El fuego está alimentado
entry-pit-kind = Tipo de ahumador indicado
entry-rack = Sitios de la parrilla indicados
entry-habits = Tiempos del asado indicados
entry-style = Forma de cargar elegida
entry-tonight = { $piece } es para esta noche
entry-later = { $piece } es para después
entry-tolerances = Tolerancias de los termómetros indicadas
entry-check-risk = Riesgo al medir elegido
entry-thermometer = Termómetro revisado
entry-clock-jumped = El reloj del teléfono ha saltado
entry-undone = Deshecho: { $what }
entry-other = Otra anotación

problem-unknown-piece = esa pieza no está preparada
problem-not-on-yet = la pieza aún no estaba en el ahumador
problem-already-on = la pieza ya estaba en el ahumador
problem-already-off = la pieza ya estaba fuera
problem-already-packed = la pieza ya estaba servida o envasada
problem-unknown-reading = la lectura ya no está
problem-too-late = llegó demasiado después de la lectura
problem-impossible-value = su valor no es posible
problem-other = ahí no tiene sentido

## Alarms
alarms = Alarmas
alarm-check = Mide { $piece }
alarm-window = { $piece }: se retira pronto
alarm-past = { $piece }: probablemente pasada de su temperatura
alarm-prove = { $piece }: mídela para comprobarla
alarm-rested = { $piece } ha reposado
alarm-chill = { $piece }: porciona, envasa y enfría pronto
alarm-warm-up = { $piece } se calienta muy despacio: debe pasar pronto de 60 °C (140 °F)
alarm-other = El asado te llama
alarm-late = Tocaba hace { $span }
alarm-snooze = En 5 min
alarm-done = Oída

## Curves
curves-title = Curvas
curves-none = Todavía no hay nada en el ahumador.
curves-next = {" "}· siguiente
zoom = Cuánto se muestra
zoom-whole = Todo
zoom-hour = 1 hora
zoom-half-hour = 30 min
curve-pull = A { $temperature } probablemente { $window }
curve-readings = { $count ->
    [0] Aún sin lectura
    [one] 1 lectura
   *[other] { $count } lecturas
 }
curve-pit = { $temperature } leídos a las { $time }, fijado a { $aim }.
curve-pit-none = Aún sin leer, fijado a { $aim }.
section-legend = Corte por la parte más gruesa: la cruz es el punto más frío, la línea es la sonda fija.

## Demo, new version, files
demo-title = Demostración a 60 veces la velocidad
demo-leave = Salir
start-demo = Ver un asado de muestra
version-title = Hay una versión nueva.
version-take = Usarla
version-later = Luego
file-save = Guardar este asado como archivo
file-open = Abrir un asado de un archivo
file-saved = Guardado como { $name }.
file-refused = El teléfono no aceptó el archivo.

## Storage trouble
trouble-storage = Este teléfono no guardó la última anotación. El asado sigue, pero deja esta página abierta.

## More, settings
more-title = Más
settings-title = Ajustes
settings-temperature = Temperatura
settings-weight = Peso
settings-length = Grosor
settings-look = Aspecto
look-light = Claro
look-dark = Oscuro
look-sun = Sol
look-auto = Como el teléfono
settings-hand = Mano
hand-right = Derecha
hand-left = Izquierda
settings-language = Idioma
language-en = English
language-es = Español
more-set-out = Preparar y planear
more-cautions = Precauciones
more-settings = Ajustes
more-end = Dejar este asado
more-new = Nuevo asado

## Cautions
cautions-title = Precauciones
cautions-1-title = Solo las lecturas comprueban
cautions-1 = Un pronóstico te dice cuándo mirar. Nunca demuestra que una pieza es segura. El ave es segura al momento a { $rule } en la parte más gruesa (FDA Food Code 2022, 3-401.11; consejo del USDA).
cautions-2-title = Cada pieza, dos puntos
cautions-2 = Mide cada pieza por sí misma, al menos en dos puntos de la parte más gruesa. Cuenta el menor.
cautions-3-title = Manos limpias, termómetro limpio
cautions-3 = Lávate las manos y lava la tabla y el termómetro entre lo crudo y lo cocinado. Limpia la sonda después de medir una pieza poco hecha. Usa un plato limpio al retirar.
cautions-4-title = Tus normas van primero
cautions-4 = Las normas sanitarias de tu lugar van antes que todo lo de aquí, y también las instrucciones del fabricante del termómetro. Revisa el termómetro en agua con hielo y en agua hirviendo.
cautions-5-title = Más cuidado con algunas personas
cautions-5 = Los niños pequeños, las embarazadas, las personas mayores y las de defensas bajas enferman antes. Si dudas, cocina más.
cautions-6-title = Lo que esta aplicación no puede saber
cautions-6 = Solo sabe lo que escribes. El pronóstico sale de un modelo de calor con sus propios errores; el viento, una forma rara o un peso equivocado lo desvían.

## Alarms on this phone
more-alarms = Alarmas en este teléfono
on = Sí
off = No
alarms-title = Alarmas en este teléfono
alarms-lead = Con esta página delante y la pantalla encendida, cada alarma llega a su hora. Con otra aplicación delante, o la pantalla apagada, el teléfono puede parar la página en un minuto o antes. Lo que te perdiste llega en cuanto vuelves a mirar, y dice cuánto se retrasó.
alarms-backup = Si te alejas del fuego, pon también el temporizador del teléfono.
alarms-notify-not-offered = Este navegador no muestra notificaciones de esta página. En un iPhone hace falta la aplicación en la pantalla de inicio.
alarms-notify-not-asked = Una notificación muestra la alarma sobre otras aplicaciones, con posponer y hecho, mientras el teléfono deje correr esta página.
alarms-notify-ask = Permitir notificaciones
alarms-notify-granted = Las notificaciones están permitidas.
alarms-notify-refused = Las notificaciones están rechazadas. Se puede cambiar en los ajustes del teléfono para esta página.
alarms-awake = Este teléfono puede dejar la pantalla encendida mientras haya una pieza en el fuego. Con poca batería puede que no.
alarms-not-awake = Este navegador no puede dejar la pantalla encendida. Alarga el tiempo de pantalla en los ajustes del teléfono.
alarms-install = En la pantalla de inicio la aplicación se guarda mejor y puede hacer más.
alarms-try = Probar mis alarmas
alarms-trying = Probando…
alarms-trial-title = Alarma de prueba
alarms-trial-snooze = Posponer
alarms-trial-done = Hecho
alarms-trial-body = Así se ve una alarma.
alarms-sound = Sonido
alarms-stay-awake = Dejar la pantalla encendida
tried-sound = Sonó una melodía. Si no la oíste, sube el volumen del teléfono.
tried-no-sound = El navegador no permitió sonido.
tried-vibration = El navegador dijo que vibraría. No todos los teléfonos lo hacen.
tried-no-vibration = Este teléfono no vibra para aplicaciones web.
tried-notification = Se mostró una notificación.
tried-no-notification = No se mostró ninguna notificación.
tried-awake = La pantalla puede quedar encendida.
tried-not-awake = La pantalla no puede quedar encendida ahora.
tried-kept = El navegador prometió conservar lo guardado.
tried-not-kept = El navegador no prometió conservar lo guardado. Guarda el asado como archivo para estar seguro.
tried-installed = La aplicación corre desde la pantalla de inicio.
tried-not-installed = La aplicación corre en una pestaña del navegador.

## Prompts, proposals, what a reading lacks
prompts = Manos y útiles limpios
prompt-probe = Limpia la sonda antes de la siguiente pieza.
prompt-plate = Toma un plato limpio para lo que sale.
prompt-done = Hecho
proposal = Temperatura de retirada
proposal-higher = Retirada a { $chosen }, esta pieza puede no quedar comprobada en el reposo. A { $lowest } sí, según el pronóstico.
proposal-lower = Retiras a { $chosen }. Según el pronóstico bastan { $lowest } para que el reposo la compruebe.
proposal-use = Retirar a { $lowest }
short-before = Esa lectura es de antes de poner la pieza por última vez.
short-packed = Esa lectura se escribió después de servir o envasar la pieza.
short-late = Esa lectura se escribió demasiado después de tomarla.
short-copied = La misma lectura se escribió para otra pieza en el mismo momento.
short-leave-in = La sonda fija sola no comprueba nada. Mide con el de lectura rápida.
short-too-fast = Ninguna pieza se calienta tan deprisa. Mídela otra vez.
short-doubted = Esa lectura no encaja con nada. Di si es correcta o escríbela otra vez.
short-contradicted = Una lectura posterior encontró un punto más frío.
short-one-place = Medida en un solo punto. Prueba otro.
entry-prompt = Aviso de limpieza hecho
entry-prompts = Avisos de limpieza cambiados
