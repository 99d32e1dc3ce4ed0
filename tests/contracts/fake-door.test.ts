import { fakeDoor } from "../support/fake-door.ts";
import { describeDoorContract } from "./door-contract.ts";

describeDoorContract(fakeDoor);
