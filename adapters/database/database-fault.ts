/** A fault of the store, told in one line that says what to do. */
export class DatabaseFault extends Error {
  readonly code:
    | "cannot_open"
    | "delivery_answered"
    | "stored_data"
    | "link_code_taken"
    | "wrong_workspace"
    | "sealed_token"
    | "job_changed"
    | "crew_changed"
    | "job_refused";

  constructor(code: DatabaseFault["code"], message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }

  /** Why a database file cannot be opened. */
  static opening(path: string, cause: unknown): DatabaseFault {
    const said = cause instanceof Error ? cause.message : String(cause);
    const [, advice] = ADVICE.find(([pattern]) => pattern.test(said)) ?? [];
    return new DatabaseFault("cannot_open", `${path}: ${advice ?? `cannot be opened (${said})`}`, { cause });
  }
}

const ADVICE: readonly (readonly [RegExp, string])[] = [
  [/not a database/, "is not a database of Oldhand. Move the file away, or set OLDHAND_DATA to another folder."],
  [/previously executed migration/, "was written by a newer Oldhand. Start that one, or set OLDHAND_DATA elsewhere."],
  [/database is locked/, "is in use by another program that does not let go. Stop it and start again."],
  [/EACCES|EROFS|readonly|unable to open/, "cannot be written. Give this user the right to, or set OLDHAND_DATA."],
  [/ENOTDIR|EEXIST/, "cannot be made: a file stands where its folder belongs. Set OLDHAND_DATA to a folder."],
  [/ENOSPC|disk is full/, "cannot be written: the disk is full."],
];
