// Made from reference-tables/waterers.csv by reference-tables/compile-tables.mjs. Edit the table, not this file.
import type { WatererName } from "./waterer-types.js";

export const watererNames: readonly WatererName[] = [
  ["bell-bucket-5gal","Bell under a bucket, 5 US gal",["bell on a bucket","bucket bell","hanging bell with a bucket"]],
  ["bucket-capped-spouts-5gal","Bucket with capped spouts, 5 US gal",["capped-spout bucket","spout bucket","elbow bucket","bucket with spouts"]],
  ["bucket-fount-5gal","Bucket turned over in a pan, 5 US gal",["bucket fount","bucket and pan","bucket in a pan"]],
  ["dish-20cm","Shallow dish, 20 cm",["dish","saucer","shallow pan","dish with pebbles"]],
  ["fount-1gal","Vacuum fount, 1 US gal",["fount","vacuum fount","1 gallon waterer","1 gallon fount","jar fount 1 gallon"]],
  ["fount-bottom-5gal","Vacuum fount filled upside down, 5 US gal",["bottom-fill fount","5 gallon fount","5 gallon waterer","bottom-filled fount"]],
  ["fount-top-3gal","Vacuum fount filled from the top, 3 US gal",["top-fill fount","top-filled fount","3 gallon fount","3 gallon waterer"]],
  ["jar-fount-1qt","Jar fount, 1 US quart",["jar fount","quart jar fount","mason jar fount","1 quart waterer","chick jar"]],
  ["nipple-bucket-2gal","Nipple bucket, 2 US gal",["small nipple bucket","2 gallon nipple bucket"]],
  ["nipple-bucket-5gal","Nipple bucket, 5 US gal",["5 gallon nipple bucket","bucket with nipples"]],
  ["nipple-bucket-5gal-side","Nipple bucket with nipples in its side, 5 US gal",["horizontal nipple bucket","bucket with side nipples"]],
  ["pan-40cm","Open pan, 40 cm",["open pan","pan","basin","wash basin"]],
  ["quail-fount-1qt","Tiny fount for quail, 1 US quart",["quail fount","quail waterer","tiny fount","quail base"]],
  ["rubber-pan-3gal","Rubber pan, 3 US gal",["3 gallon rubber pan","large rubber pan"]],
  ["rubber-pan-8qt","Rubber pan, 8 US quarts",["rubber pan","small rubber pan","2 gallon rubber pan"]],
  ["trough-90cm","Open trough, 90 cm",["trough","open trough","3 ft trough"]],
  ["water-tower-15gal","Water tower with a shade roof, 15 US gal",["water tower","shaded tower","range waterer"]],
];
