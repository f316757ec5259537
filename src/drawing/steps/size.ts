/** mm on paper. */
export interface Size {
  readonly width: number;
  readonly height: number;
}
