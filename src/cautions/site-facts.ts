/** What somebody is about to do on site. */
export type Work = "survey" | "removal" | "piping" | "wiring" | "refrigerant_circuit" | "start_up" | "hand_over";

/** Where the heater stands. */
export type Room =
  | "basement"
  | "garage"
  | "attic"
  | "crawl_space"
  | "closet"
  | "utility_room"
  | "living_space"
  | "outdoors";

/**
 * What may be known of a site, in base units. Cautions look only at this; topics fill in what their facts tell.
 * Every field is optional: an unknown fact never raises a caution by itself. Where one known fact calls for another
 * (a garage for impact protection, work on wires for a lock), the caution may speak until the other is known to be so.
 */
export interface SiteFacts {
  // The job.
  readonly work?: Work;
  /** True: an old heater comes out of the same spot. */
  readonly isReplacement?: boolean;
  /** True: the old heater burned gas. */
  readonly isReplacingGas?: boolean;
  readonly hasPermit?: boolean;
  /** True: the inspector has seen the work and signed. */
  readonly isInspected?: boolean;
  /** True: whoever lives there was shown how to run and care for it. */
  readonly isOwnerShown?: boolean;
  /** True: old vent or pipe wrap looks as if it could hold asbestos. */
  readonly mayHoldAsbestos?: boolean;

  // The people.
  /** True: children under five, people over 65, ill people, or people who feel heat poorly live there. */
  readonly hasVulnerableOccupants?: boolean;

  // Temperatures of the water.
  readonly storage_C?: number;
  readonly tap_C?: number;
  readonly bidet_C?: number;
  /** At a lavatory that the public uses. */
  readonly publicLavatory_C?: number;
  readonly hasMixingValve?: boolean;
  /** True: showers and tubs have valves of their own that limit the temperature. */
  readonly areFixturesLimited?: boolean;
  /** How long the water has stood, or will stand, unused. */
  readonly stood_s?: number;
  /** True: a capped or unused branch stays joined to the hot water. */
  readonly hasDeadLeg?: boolean;

  // Pressure, expansion and relief.
  readonly linePressure_kPa?: number;
  readonly isClosedSystem?: boolean;
  readonly hasExpansionTank?: boolean;
  /** False: a check valve stands between the heater and the expansion tank. */
  readonly isExpansionTankOnHeaterSide?: boolean;
  readonly precharge_kPa?: number;
  /** True: the relief valve is what lets out the growth of the water. */
  readonly expandsThroughRelief?: boolean;
  readonly reliefSetting_kPa?: number;
  readonly hasReliefValve?: boolean;
  /** True: outlet or discharge pipe is capped, plugged or frozen shut. */
  readonly isReliefPlugged?: boolean;
  readonly hasReliefDischarge?: boolean;
  readonly reliefOutlet_m?: number;
  /** Smallest bore of the discharge pipe. */
  readonly reliefDischarge_m?: number;
  /** True: it rises, holds a trap, a valve or a tee, or ends in a thread. */
  readonly canReliefDischargeBlock?: boolean;
  /** Height of its end over the floor, the rim of the receptor or the ground. */
  readonly reliefDischargeEnd_m?: number;
  readonly reliefDischargeEndsIn?: "floor" | "drain" | "pan" | "outdoors";

  // The heater, its weight and the way in.
  readonly tank_L?: number;
  /** Mass of the unit dry, as it is carried. */
  readonly unitMass_kg?: number;
  /** Mass of the unit full of water. */
  readonly filledMass_kg?: number;
  /** Mass that somebody who may say so allows on that spot. */
  readonly floorAllows_kg?: number;
  readonly floor?: "concrete" | "wood";
  /** Narrowest side of the unit that must pass. */
  readonly unitWidth_m?: number;
  readonly narrowestPassage_m?: number;
  readonly hasLiftingGear?: boolean;
  readonly wasLaidDown?: boolean;

  // Where it stands.
  readonly room?: Room;
  /** Free height over the unit, and what anode and filter need. */
  readonly headroom_m?: number;
  readonly headroomNeeded_m?: number;
  readonly airClearance_m?: number;
  readonly airClearanceNeeded_m?: number;
  /** Smaller side of the level space before the controls. */
  readonly serviceSpace_m?: number;
  readonly isFilterReachable?: boolean;
  /** True: a bollard, a wall or the spot itself keeps cars off. */
  readonly isImpactProtected?: boolean;
  /** Height of the lowest part that sparks or glows over a garage floor. */
  readonly ignitionHeight_m?: number;
  /** True: the listing of the unit lets it stand on a garage floor. */
  readonly isListedForGarageFloor?: boolean;
  readonly hasSafeAccess?: boolean;
  readonly isSeismicArea?: boolean;
  readonly straps?: number;
  readonly strapAboveControls_m?: number;

  // Air, room and sound.
  readonly roomVolume_m3?: number;
  readonly roomVolumeNeeded_m3?: number;
  readonly netFreeArea_m2?: number;
  readonly netFreeAreaNeeded_m2?: number;
  readonly isDucted?: boolean;
  /** Lowest air temperature of the room over the year or with the unit running. */
  readonly roomLow_C?: number;
  /** Coldest air at which the unit's sheet lets the heat pump run. */
  readonly lowestAir_C?: number;
  /** How much colder the air at the intake is than the room, after half an hour of running. */
  readonly intakeBelowRoom_K?: number;
  readonly exhaustToThermostat_m?: number;
  readonly ductDrop_Pa?: number;
  readonly ductDropAllowed_Pa?: number;
  /** True: the cold air leaves through a duct. */
  readonly hasExhaustDuct?: boolean;
  readonly isExhaustDuctInsulated?: boolean;
  /** True: air is blown out of the house and none is led in for it. */
  readonly exhaustsHouseAir?: boolean;
  /** How far the house stands below the outdoor pressure with everything that blows out running. */
  readonly housePressureBelow_Pa?: number;
  readonly soundAtBedroom_dBA?: number;
  readonly isOnBedroomWall?: boolean;

  // Fuel and flues.
  /** True: a fuel appliance that takes its air from the house and drafts by itself. */
  readonly hasNaturalDraftAppliance?: boolean;
  /** True: another appliance stays on the flue that the old heater used. */
  readonly sharesFlue?: boolean;
  readonly isGasLineCapped?: boolean;
  readonly smellsOfGas?: boolean;

  // Pan and condensate.
  /** True: a leak would harm the building. */
  readonly leakDoesDamage?: boolean;
  readonly hasPan?: boolean;
  readonly hasPanDrain?: boolean;
  readonly panDepth_m?: number;
  readonly panDrain_m?: number;
  readonly condensateEndsIn?: "nowhere" | "pan" | "drain_with_air_gap" | "drain_direct" | "outdoors" | "pump";
  /** Fall of the condensate line over its length. */
  readonly condensateSlope_share?: number;
  readonly isPumpFloatWired?: boolean;
  /** True: the heat pump stands outdoors and water runs to it. */
  readonly hasOutdoorWaterLines?: boolean;
  readonly areOutdoorLinesProtected?: boolean;

  // The circuit.
  readonly elementPower_W?: number;
  readonly supply_V?: number;
  readonly ratedVoltage_V?: number;
  readonly breaker_A?: number;
  /** Continuous load of the circuit with its quarter on top. */
  readonly designCurrent_A?: number;
  /** Largest breaker that load and conductor allow. */
  readonly largestBreaker_A?: number;
  /** Conductor that is there, and what it may carry. */
  readonly wireAmpacity_A?: number;
  readonly voltageDrop_share?: number;
  readonly conductorMetal?: "copper" | "aluminium";
  /** What panel or feeder can still carry. */
  readonly feederSpare_A?: number;
  /** True: the panel's label lists that breaker. */
  readonly isBreakerListed?: boolean;
  readonly hasDisconnectInSight?: boolean;
  /** True: the breaker can be locked open, and what holds the lock stays there. */
  readonly isBreakerLockable?: boolean;
  readonly workingDepth_m?: number;
  readonly workingWidth_m?: number;
  /** Hot pipe to cold pipe to tank to ground. */
  readonly bond_ohm?: number;
  readonly isWetPlace?: boolean;
  readonly hasGroundFault?: boolean;
  /** True: locked out, tagged, and proved dead with a tester that was itself proved. */
  readonly isLockedOut?: boolean;
  readonly isTankFull?: boolean;

  // Pipes and what hangs on them.
  readonly pipeMetal?: "copper" | "plastic";
  readonly hotPipeVelocity_m_s?: number;
  readonly coldPipeVelocity_m_s?: number;
  /** Temperature of the water in the hot pipe while it runs. */
  readonly hotPipe_C?: number;
  readonly hotPipeContents_L?: number;
  readonly isHotPipeInsulated?: boolean;
  readonly hasHeatTraps?: boolean;
  /** True: copper or brass meets steel or a steel tank port. */
  readonly joinsUnlikeMetals?: boolean;
  readonly hasDielectricFitting?: boolean;
  readonly isMarkedLeadFree?: boolean;
  /** True: the water is joined to a heating loop, a boiler or another water that nobody drinks. */
  readonly isJoinedToOtherWater?: boolean;
  readonly hasBackflowPreventer?: boolean;
  readonly hasShutOff?: boolean;
  readonly hasDrainValve?: boolean;

  // The circulation loop.
  readonly hasCirculationLoop?: boolean;
  readonly loopControl?: "always_on" | "timer" | "demand";
  readonly hasLoopCheckValve?: boolean;
  readonly loopReturn_C?: number;

  // The water.
  readonly hardness?: "soft" | "moderate" | "hard" | "very_hard";
  readonly isSoftened?: boolean;
  readonly isOnWell?: boolean;

  // Refrigerant.
  readonly opensRefrigerantCircuit?: boolean;
  /** True: whoever does it holds the federal card for that refrigerant. */
  readonly holdsRefrigerantCard?: boolean;
  readonly isRefrigerantFlammable?: boolean;
  /** True: the heater that comes out holds refrigerant. */
  readonly oldHeaterHoldsRefrigerant?: boolean;
}
