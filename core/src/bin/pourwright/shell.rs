//! Completions and the man page, from the same source as the help.

use std::io;
use std::process::ExitCode;

use clap::CommandFactory;
use clap_complete::Shell;
use clap_mangen::Man;

use crate::arguments::Arguments;
use crate::{Stop, print};

/// Prints the completions of `shell`.
pub(crate) fn completions(shell: Shell) -> Result<ExitCode, Stop> {
    let mut text = Vec::new();
    clap_complete::generate(shell, &mut Arguments::command(), "pourwright", &mut text);
    print(&String::from_utf8(text).map_err(io::Error::other)?)
}

/// Prints the man page: the command, then each of its commands.
pub(crate) fn man() -> Result<ExitCode, Stop> {
    let mut command = Arguments::command();
    command.build();
    let mut text = Vec::new();
    Man::new(command.clone()).render(&mut text)?;
    for one in command.get_subcommands().filter(|one| !one.is_hide_set()) {
        let page = Man::new(one.clone());
        page.render_name_section(&mut text)?;
        page.render_synopsis_section(&mut text)?;
        page.render_options_section(&mut text)?;
        page.render_extra_section(&mut text)?;
    }
    print(&String::from_utf8(text).map_err(io::Error::other)?)
}
