/** What a company has loaded: the demo company's seeds, or its own. Frozen at start-up. */
export interface Books {
  readonly company: Company;
}

export interface Company {
  readonly name: string;
  /** True: every name and number in these books is invented. */
  readonly isInvented: boolean;
  /** IANA time zone name. */
  readonly timeZone: string;
}
