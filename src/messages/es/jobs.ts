import type { JobTexts } from "../job-texts.ts";

export const jobs: JobTexts = {
  statuses: {
    planned: "planificado",
    surveyed: "inspeccionado",
    under_way: "en curso",
    open_items: "cerrado con pendientes",
    complete: "terminado",
    called_back: "con reclamo",
    cancelled: "cancelado",
  },
  roles: { technician: "técnico", dispatcher: "despacho", manager: "gerente", owner: "dueño" },
  changes: {
    opened: "abrir un trabajo",
    planned: "planificar día y personal",
    unit: "cambiar el equipo",
    permit: "anotar el permiso",
    status: "cambiar el estado",
    facts: "anotar datos",
    reading: "anotar una medición",
    item_opened: "agregar un pendiente",
    item_closed: "cerrar un pendiente",
    file: "agregar un archivo",
    parts: "anotar piezas usadas",
    note: "agregar una nota",
    trail: "agregar al registro de la falla",
    withdrawn: "retirar una anotación",
  },
  refusals: {
    unknown_job: (job) => `No hay ningún trabajo ${job}. Revise el número.`,
    number_taken: (job) => `El trabajo ${job} ya existe. Tome otro número.`,
    customer_too_much:
      "Nombre al cliente solo con iniciales o un apodo, como T. M.: dos palabras cortas a lo sumo, y sin números.",
    not_in_this_status: (status, change) =>
      `El trabajo está ${status}: ahora no se puede ${change}. Cambie primero el estado.`,
    not_your_role: (roles) => `Esto les toca a: ${roles}. Pídaselo a una de esas personas.`,
    no_such_step: (from, to, next) =>
      next === ""
        ? `El trabajo está ${from} y no puede pasar a ${to}. Desde aquí usted no puede cambiarlo; pregunte en la oficina.`
        : `El trabajo está ${from} y no puede pasar a ${to}. Desde aquí puede pasar a: ${next}.`,
    says_why: (to) => `Diga en pocas palabras por qué el trabajo queda ${to}.`,
    items_left: (items) => `Quedan pendientes: ${items}. Ciérrelos primero, o cierre el trabajo con pendientes.`,
    no_item_left: "No queda ningún pendiente. Ponga el trabajo como terminado, o agregue primero el pendiente.",
    reading_unexplained: (readings) =>
      `No aceptadas y sin motivo: ${readings}. Mida otra vez, o diga por qué se dejan así.`,
    unknown_item: (item, open) =>
      open === ""
        ? `No hay ningún pendiente ${item}; no queda nada abierto.`
        : `No hay ningún pendiente ${item}. Abiertos: ${open}.`,
    unknown_event: (event) => `No hay ninguna anotación ${event} en este trabajo. Busque el número en el historial.`,
    other_kind: (event) => `La anotación ${event} trata de otra cosa. Corríjala con una anotación del mismo tipo.`,
    not_your_event: (by) => `Esto lo anotó ${by}. Pídale que lo corrija, o pídaselo a un gerente.`,
  },
  files: {
    empty: "El archivo está vacío. Envíelo otra vez.",
    too_large: (most_MB) => `El archivo pasa de ${most_MB} MB. Envíe una imagen más pequeña o menos páginas.`,
    heic: "No puedo guardar imágenes HEIC ni AVIF. Envíela como JPEG: ponga la cámara en «más compatible», o envíe una captura de pantalla.",
    unknown_type: "Solo guardo imágenes (JPEG, PNG, WebP) y archivos PDF. Envíelo en uno de estos formatos.",
    damaged: "El archivo está dañado o incompleto y no pude quitarle la ubicación. Envíelo otra vez.",
  },
  mayRepeat: "Puede que esto sea una repetición: no pude saber si ya había llegado.",
  lostPostsTitle: "No entregado",
  lostPost: (title, channel, because) => `«${title}» no llegó a ${channel}: ${because}`,
};
