/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** Slug of the lesson whose page is being built; the tags belong to it. */
    lesson: string;
  }
}
