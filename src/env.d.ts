/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** Subject of the lesson or rule whose page is being built; its tags belong to it. */
    subject: string;
  }
}
