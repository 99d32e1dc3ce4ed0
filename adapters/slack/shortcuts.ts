/** Ids under which the app's shortcuts are declared in its manifest and heard. */
export const START_WALK = "start_walk";
export const ASK_ABOUT = "ask_about";
