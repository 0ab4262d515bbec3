# reviewed: not yet

### Signos de las unidades, marcas delante de las líneas y lo que piden las listas.

# en: 0eeb8598
unit-volt = V
# en: 947cc294
unit-ampere = A
# en: 6728c6a0
unit-celsius = °C
# en: bc245776
unit-hour = h
# en: 1e27c4f1
unit-bar = bar
# Densidad del ácido de la batería, con densímetro
# en: 52a44a31
unit-gravity = kg/l
# en: 962184f4
unit-ohm = Ω
# en: 4d732a62
unit-rpm = rpm
# en: 1041ffcd
unit-minute = min
# en: 72e44228
unit-kilometre = km
# Peso de la prueba
# en: 63d9664b
unit-deciban = dB
# en: f4bf07e3
mark-caution = Cuidado:
# en: 52478e59
list-empty = nada
