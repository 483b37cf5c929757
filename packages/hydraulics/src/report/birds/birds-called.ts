import { allBirds } from "../../tables/birds.js";

const many = new Map(allBirds.map((kind) => [kind.name, kind.many]));

/** Birds of a kind as they are called within a sentence: "Laying hen" becomes "laying hens". */
export function birdsCalled(kindName: string): string {
  return many.get(kindName) ?? kindName;
}

/** So many of them; one has its kind's own name. */
export function countedBirds(count: number, kindName: string): string {
  return count === 1 ? `1 × ${kindName}` : `${count} ${birdsCalled(kindName)}`;
}
