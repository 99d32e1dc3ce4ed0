import type { CrewTexts } from "../crew-texts.ts";

export const crewRecords: CrewTexts = {
  refusals: {
    crew_role: (roles) => `Esto es para: ${roles}. Pídaselo a uno de ellos.`,
    crew_unknown_event: (event) =>
      `No hay ninguna anotación ${event} de la cuadrilla que retirar. Escriba “cuadrilla historial” para ver los números.`,
    only_owner: "Solo un dueño nombra a otro dueño o le quita ese puesto. Pídaselo a uno de ellos.",
    last_owner: "No hay otro dueño. Nombre primero a otro.",
  },
  offTruck: (truck, job, kinds) => `Salen de ${truck} para el trabajo ${job}: ${kinds} clases de piezas.`,
  backOnTruck: (truck, job) => `Vuelve a ${truck} lo que se usó en el trabajo ${job}.`,
  takenBack: "También se retira del registro de la cuadrilla.",
  announced: "El canal del equipo lo recibe.",
  notAnnounced: "No se avisó al canal del equipo: company.yaml no nombra team_channel.",
  planTitle: "El plan",
};
