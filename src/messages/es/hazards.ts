import type { HazardTexts } from "../hazard-texts.ts";

export const hazards: HazardTexts = {
  lockout: {
    label: "Bloqueo y etiqueta",
    steps: [
      "Breaker o desconectador abajo; su candado y su etiqueta puestos, la llave en la bolsa.",
      "Compruebe el probador en algo con corriente.",
      "Compruebe que está muerto: entre fases, y cada fase a tierra.",
      "Compruebe otra vez el probador en algo con corriente.",
      "Espere a los capacitores, y descargue el que va a tocar.",
    ],
  },
  live: {
    label: "Partes con corriente",
    steps: [
      "Solo alguien calificado para trabajar con corriente; los demás paran aquí y lo remiten.",
      "Medidor y puntas CAT III o mejor; lentes y guantes aislantes.",
      "Piso seco, sin joyas, una mano si se puede, nadie más al alcance.",
      "Bloquee para abrir o cerrar la tapa; con corriente solo mientras mide.",
    ],
  },
  scald: {
    label: "Agua caliente",
    steps: [
      "Piense que el agua quema hasta medirla: a 140 °F (60 °C) quema en segundos.",
      "Guantes y lentes; échela a una cubeta o drenaje, con manguera si queda lejos.",
      "Mientras, que la familia no use las llaves.",
    ],
  },
  pressure: {
    label: "Presión",
    steps: [
      "Nunca tape ni amarre una válvula de alivio.",
      "Quite la presión antes de abrir, y vea el manómetro en cero.",
      "Manómetro de 200 psi (1400 kPa) o más.",
    ],
  },
  refrigerant: {
    label: "Refrigerante",
    steps: [
      "Sin manómetros y sin abrir el circuito si no tiene el certificado EPA 608.",
      "Puede arder: sin flama, sin chispa, y aire en el cuarto.",
      "Si silba o huele a aceite, salga y ventile.",
    ],
  },
  ladder: {
    label: "Escalera o ático",
    steps: [
      "Escalera en piso firme, amarrada o detenida, tres puntos de apoyo.",
      "En ático o entrepiso: luz, tablas para pisar, y alguien que sepa que está ahí.",
    ],
  },
  gas: {
    label: "Gas o humos",
    steps: [
      "Medidor de CO prendido y leído primero afuera; puertas abiertas.",
      "Más de 35 ppm, o alguien mareado: todos afuera, y llame desde afuera.",
      "Sin flama ni chispa donde se pudo juntar gas o hidrógeno.",
    ],
  },
  water_off: {
    label: "Agua cerrada",
    steps: [
      "Avise a la familia antes de cerrar el agua.",
      "Primero corte la corriente del calentador: una resistencia en seco se quema.",
      "Cierre la llave, abra una caliente y espere a que no salga nada.",
    ],
  },
};
