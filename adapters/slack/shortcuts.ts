/** Ids under which the app's shortcuts are declared in its manifest and heard. */
export const START_WALK = "start_walk";
export const ASK_ABOUT = "ask_about";
/** Names the modal that asks which walk to start; `WALK_BLOCK` is its one field. */
export const WALK_CALLBACK = "walk";
export const WALK_BLOCK = "walk";
