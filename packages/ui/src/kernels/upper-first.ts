/** With a capital, as a heading begins. A name the user wrote in small letters gets one too. */
export const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
