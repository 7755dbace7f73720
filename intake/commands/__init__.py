"""What each command of the command line does; `intake.cli` says what it is called and takes."""
