/** Published and computed values on heat-pump water heaters in small rooms; each row says where it comes from. */
export const ROOM_REFERENCE = {
  /** Energy balance: 4500 Btu/h into the water at COP 3 takes 3000 Btu/h from the room. */
  heatTaken: { water_Btu_h: 4500, cop: 3, taken_Btu_h: 3000 },
  /** Energy balance: duty times heat over conductance [F]. */
  steadyFall: [
    { heat_Btu_h: 4500, conductance_Btu_h_F: 150, fall_F: 30 },
    { heat_Btu_h: 3000, conductance_Btu_h_F: 150, fall_F: 20 },
    { heat_Btu_h: 4000, conductance_Btu_h_F: 300, fall_F: 13.333 },
  ],
  /** Energy balance, air of 0.075 lb/ft3 and 0.24 Btu/(lb F) alone, at 3000 Btu/h [Btu/F] and [F/min]. */
  airAlone: [
    { volume_ft3: 450, capacity_Btu_F: 8.1, fall_F_min: 6.17 },
    { volume_ft3: 700, capacity_Btu_F: 12.6, fall_F_min: 3.97 },
    { volume_ft3: 1000, capacity_Btu_F: 18, fall_F_min: 2.78 },
  ],
  /**
   * Laboratory study of a regional efficiency alliance (Larson Energy Research), as summarised in print: the same unit in
   * a closed room of 700 and of 450 ft3, medium (55 gal) and high (84 gal) daily draw pattern of the federal test.
   */
  lab: {
    volumes_ft3: [700, 450],
    medium: { draw_gal: 55, cop: [3.21, 2.96], drop: 0.078 },
    high: { draw_gal: 84, cop: [2.63, 2.26], drop: 0.141 },
  },
  /** ENERGY STAR frequently asked questions: no more measures from the maker's 450 to 700 ft3 on, else 240 in2 in all. */
  advice: { closedFrom_ft3: [450, 700], freeArea_in2: 240 },
  /** California 2025 energy code, 110.3(c)7B: 100 ft3 for each 1000 Btu/h of compressor capacity. */
  california: { kBtu_h: 5, volume_ft3: 500 },
} as const;
