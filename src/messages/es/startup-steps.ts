import type { StepWords } from "../startup-texts.ts";

/** The steps of starting a heater up, in Spanish. */
export const startupSteps: Readonly<Record<string, StepWords>> = {
  filled: {
    label: "Lleno antes de dar corriente",
    question: "¿Está lleno el tanque, todavía sin corriente?",
    how: "Abrir una llave caliente, abrir el agua fría y dejar correr hasta que salga pareja. Antes, nada de corriente.",
  },
  purged: {
    label: "Aire purgado",
    question: "¿Salen todas las llaves calientes sin escupir aire?",
    how: "Abrir cada llave caliente, la más lejana al final, hasta que no salga aire. Limpiar los aireadores.",
  },
  tight: {
    label: "Sin fugas",
    question: "¿Están secas todas las uniones a plena presión?",
    how: "Todas las llaves cerradas. Secar cada unión con papel, esperar diez minutos y volver a pasar el papel.",
  },
  line_pressure: {
    label: "Presión estática, medida",
    question: "¿Qué marca el manómetro con todo cerrado?",
    how: "Manómetro en el drenaje del calentador o en una llave de manguera, sin consumo. Mirar un minuto si sube.",
  },
  precharge: {
    label: "Aire del tanque de expansión",
    question: "¿Qué marca el medidor de aire en el tanque de expansión?",
    how: "Agua cerrada y una llave abierta, para que nada lo presione. Se deja igual que la presión de la línea.",
  },
  relief_free: {
    label: "Descarga de la válvula de alivio",
    question: "¿Va el tubo de alivio a tamaño completo, en bajada y abierto hasta el final?",
    how: "Seguirlo con la vista: sin llave, sin tapón, sin rosca al final, y termina donde no hay nadie.",
  },
  bond: {
    label: "Unión a tierra",
    question: "¿Cuántos ohmios hay del tubo caliente al frío, al tanque y a tierra?",
    how: "Bloqueado y comprobado sin tensión. Antes, óhmetro en cero con sus propias puntas.",
  },
  supply: {
    label: "Voltaje de alimentación",
    question: "¿Qué voltaje llega al equipo?",
    how: "Entre fases y de cada fase a tierra: las dos fases marcan igual. Interruptor correcto y rotulado.",
  },
  air_clear: {
    label: "Paso del aire",
    question: "¿Está libre el paso del aire y puesto el filtro?",
    how: "Nada delante de la entrada ni de la salida, ductos unidos y sellados, rejillas abiertas, filtro limpio.",
  },
  condensate_runs: {
    label: "El condensado corre",
    question: "¿Llegó una taza de agua hasta el final del drenaje?",
    how: "Verterla en la bandeja del equipo y mirar dónde sale. Con bomba, oír que arranca y que para.",
  },
  set_temperature: {
    label: "Ajuste del tanque",
    question: "¿Qué temperatura ajustada muestra la pantalla?",
    how: "La planeada para esta casa. Por encima de 120 °F (49 °C) va una válvula mezcladora entre el tanque y las llaves.",
  },
  controls_set: {
    label: "Modo, horario y reloj",
    question: "¿Están puestos el modo, el horario y el reloj como se planeó?",
    how: "Primero el reloj: un horario con el reloj mal puesto calienta a deshora.",
  },
  first_rise: {
    label: "Primera hora de calentamiento",
    question: "¿Cuánto subió el tanque en la primera hora?",
    how: "Diferencia en la pantalla o en una llave junto al tanque, sin que nadie gaste agua mientras tanto.",
  },
  outlet_temperature: {
    label: "Caliente en la llave",
    question: "¿A cuánto sale en la llave más cercana cuando se estabiliza?",
    how: "Primero el tanque caliente. Ajustar la mezcladora, dejar correr tres minutos, termómetro en el chorro. Repetir.",
  },
  handed_over: {
    label: "Entregado al hogar",
    question: "¿Se le mostró al hogar cómo usarlo?",
    how: "Qué hace cada modo, cuándo limpiar el filtro, qué poner al viajar y cómo quema el agua caliente.",
  },
};
