/** Soils that a plan can name; what each is presumed to bear stands in the table of soils. */
export const SOILS = ["clay", "gravel", "rock", "sand", "split-rock"] as const;
