"""`python -m intake` is `trunktalk`."""

from intake.cli import main

if __name__ == "__main__":
    main(prog_name="trunktalk")
