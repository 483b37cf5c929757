export declare function packPng(png: Buffer): Buffer;
