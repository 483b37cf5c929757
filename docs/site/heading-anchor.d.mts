export function headingAnchor(heading: string, taken: Set<string>): string;
