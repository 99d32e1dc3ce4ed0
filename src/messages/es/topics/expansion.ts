import type { expansion } from "../../../topics/expansion.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof expansion> = {
  title: "Tanque de expansión",
  summary: "Cuánto crece el agua, y el tanque de expansión y la carga de aire que lo reciben.",
  examples: [
    "expansion tanque de 80 gal, fría 50F, caliente 140F, 60 psi",
    "expansion tanque 50 gal, caliente 120F, presión 60 psi, límite 80 psi",
    "expansion 66 gal, caliente 140F, fría 40F, 60 psi, tanque existente 2 gal, precarga 40 psi",
  ],
  facts: {
    tank: commonFacts.tank,
    setpoint: commonFacts.setpoint,
    line_pressure: commonFacts.line_pressure,
    cold: commonFacts.cold,
    closed: commonFacts.closed,
    relief_setting: commonFacts.relief_setting,
    control: {
      label: "Qué recibe la expansión hoy",
      question: "¿Qué recibe hoy la expansión del agua?",
      words: ["control de expansión"],
      options: {
        none: { label: "Sin tanque de expansión", words: ["no hay tanque de expansión", "sin control de expansión"] },
        tank: { label: "Hay tanque de expansión", words: ["tiene tanque de expansión", "con tanque de expansión"] },
        relief_valve: { label: "Gotea la válvula de alivio", words: ["la válvula gotea", "gotea el alivio"] },
      },
    },
    pressure_limit: {
      label: "Límite de presión",
      question: "¿Hasta dónde puede subir la presión?",
      help: "Sin un límite suyo, me quedo 10 % abajo del ajuste de la válvula de alivio.",
      words: ["límite", "límite de presión", "máximo", "presión máxima", "tope"],
    },
    pipe_volume: {
      label: "Agua en la tubería caliente",
      question: "¿Cuánta agua hay en la tubería caliente?",
      help: "Poca en una casa; démela si hay tramos largos o un circuito de recirculación.",
      words: ["tubería", "volumen de tubería", "agua en la tubería"],
    },
    vessel_metal: {
      label: "Metal que también crece",
      question: "¿De qué es el tanque?",
      help: "Solo la fórmula completa lo cuenta. La medida siguiente usa el número más seguro, sin él.",
      words: ["metal", "metal del tanque"],
      options: {
        steel: { label: "Acero", words: ["acero", "acero vidriado"] },
        copper: { label: "Cobre", words: ["cobre"] },
        none: { label: "No contarlo", words: ["sin metal"] },
      },
    },
    existing_tank: {
      label: "Tanque de expansión que hay",
      question: "¿De qué tamaño es el tanque de expansión que hay?",
      help: "El volumen total, de la etiqueta.",
      words: ["tanque existente", "tanque de expansión existente", "tanque instalado"],
    },
    existing_precharge: {
      label: "Su carga de aire",
      question: "¿Qué presión de aire tiene?",
      help: "Manómetro de llantas en la válvula de aire, con el lado del agua vaciado y sin presión.",
      words: ["precarga", "carga de aire", "presión de aire"],
    },
  },
  results: {
    expanded_volume: "El agua crece",
    acceptance_volume: "Aceptación necesaria",
    tank_volume_minimum: "Tanque mínimo, por aceptación",
    tank_volume_full_formula: "Tanque mínimo, fórmula completa",
    next_stock_size: "Siguiente medida común",
    precharge: "Carga de aire",
    pressure_ceiling: "La presión puede subir hasta",
    tank_volume_code_limit: "Tanque mínimo para el límite del código",
    existing_acceptance: "Recibe el tanque que hay",
  },
  findings: {
    needs_tank: ({ ceiling, minimum, size, precharge }) =>
      `Para no pasar de ${ceiling}, tanque de expansión de al menos ${minimum}: siguiente medida común ${size}, aire a ${precharge}.`,
    needs_large_tank: ({ minimum, precharge }) =>
      `Necesita al menos ${minimum} con aire a ${precharge}: más que las medidas comunes. Use varios tanques o consulte a un ingeniero.`,
    existing_enough: ({ acceptance, needed }) =>
      `El tanque de expansión que hay recibe ${acceptance}; el agua crece ${needed}.`,
    existing_short: ({ acceptance, needed }) =>
      `Muy chico: el tanque de expansión que hay recibe ${acceptance} y el agua crece ${needed}. Ponga uno más grande.`,
    open_system: ({ expanded }) =>
      `Sistema abierto: los ${expanded} de más regresan a la calle. Una válvula check o un regulador cambiaría eso.`,
    code_limit_larger: ({ volume, limit }) =>
      `Los códigos modelo piden no pasar de ${limit}: eso pide al menos ${volume}. Pregunte qué límite vale aquí.`,
    check_acceptance: ({ acceptance }) =>
      `Revise la aceptación que da el fabricante: al menos ${acceptance}. El diafragma puede topar antes de llenarse el tanque.`,
    set_precharge_dry: ({ precharge }) =>
      `Ponga el aire a ${precharge} antes de meterle agua. Muchos vienen de fábrica con otra presión.`,
    place_tank: () => "Póngalo en el lado frío, después de la check o del regulador, sin llave de paso en medio.",
    existing_precharge_assumed: ({ precharge }) =>
      `Tomé su carga de aire como ${precharge}. Mídala con el lado del agua vaciado, y dígame.`,
    give_existing_size: () => "Deme su volumen total y su carga de aire, y reviso si alcanza.",
    hot_not_above_cold: ({ setpoint, cold }) =>
      `Un tanque a ${setpoint} no está más caliente que el agua fría a ${cold}; nada crece. Revise las dos temperaturas.`,
    line_at_ceiling: ({ line_pressure, ceiling }) =>
      `La presión de línea de ${line_pressure} no deja margen abajo de ${ceiling}. Primero baje la presión, luego calcule el tanque.`,
    limit_above_relief: ({ limit, relief }) =>
      `Un límite de ${limit} pasa del ajuste de alivio de ${relief}. Dé un límite más bajo.`,
    step_code_limit: ({ limit }) => `Sin pasar de ${limit}`,
    step_mix: ({ setpoint }) => `Mezcla desde ${setpoint}`,
  },
};
