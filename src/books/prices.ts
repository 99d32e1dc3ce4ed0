/** What energy costs and emits, with the day each number was set. Every price is the company's own. */
export interface PriceBook {
  /** Day the prices were set, YYYY-MM-DD. */
  readonly setOn: string;
  readonly electricity: readonly [ElectricityPlan, ...ElectricityPlan[]];
  /** Price of gas burnt [US dollars a kWh of gas]. */
  readonly gas_usd_kWh: number;
  readonly emissions: Emissions;
  readonly incentives: readonly Incentive[];
}

export interface ElectricityPlan {
  readonly id: string;
  readonly name: string;
  /** Prices by season; together they cover every month once. */
  readonly seasons: readonly [Season, ...Season[]];
}
export interface Season {
  /** Months, 1 = January. */
  readonly months: readonly number[];
  /** Price of each hour, hour 0 first, 24 numbers [US dollars a kWh]. */
  readonly weekday_usd_kWh: readonly number[];
  readonly weekend_usd_kWh: readonly number[];
}

export interface Emissions {
  /** Day the factors were set, YYYY-MM-DD. */
  readonly setOn: string;
  readonly electricity_kg_kWh: number;
  readonly gas_kg_kWh: number;
}

/** Money back for a heat-pump water heater. */
export interface Incentive {
  readonly id: string;
  readonly name: string;
  /** A fixed sum, or a share of the installed price up to a limit. */
  readonly amount_usd?: number;
  readonly share?: number;
  readonly limit_usd?: number;
}
