import { Component, type ReactNode } from 'react';

interface Props {
  /** What is guarded; another one gets a chance of its own. */
  readonly of: string;
  /** What is said where it fails, before the button that reloads the page. */
  readonly say: string;
  readonly children: ReactNode;
}
interface State {
  readonly of: string;
  readonly failed: boolean;
}

/** Where a part of the screen fails, a plain word and a way on stand in its place; what is round it stays. */
export class Guard extends Component<Props, State> {
  override state: State = { of: this.props.of, failed: false };

  static getDerivedStateFromError(): Partial<State> {
    return { failed: true };
  }

  static getDerivedStateFromProps({ of }: Props, before: State): State | null {
    return of === before.of ? null : { of, failed: false };
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    return (
      <section className="ticket">
        <p className="notice" role="alert">
          {this.props.say}{' '}
          <button type="button" onClick={() => location.reload()}>
            Reload the page
          </button>
        </p>
      </section>
    );
  }
}
