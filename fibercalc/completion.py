"""Completion for three shells: a script that knows every command, card and input.

It is printed once and asks nothing after that.
"""

from .core.card import Card, Rows
from .core.registry import all_cards, chapters

SHELLS = ("bash", "zsh", "fish")
COMMANDS = {
    "cards": "every card, or those of a chapter",
    "show": "what a card asks and what follows",
    "work": "the answer of a card",
    "completion": "a script for your shell",
}
SETTINGS = {
    "file": "a JSON file with inputs by name; - is standard input",
    "style": "1,200.5 (point) or 1.200,5 (comma)",
    "system": "units",
    "money": "your money sign",
}
STYLES = ("point", "comma")
SYSTEMS = ("both", "metric", "us")


def script(shell: str) -> str:
    """The script for one of SHELLS."""
    inputs = {card.id: " ".join(f"{name}=" for name in names_of(card)) for card in all_cards()}
    return {"bash": _bash, "zsh": _zsh, "fish": _fish}[shell](inputs)


def names_of(card: Card) -> list[str]:
    """Inputs as they are typed; of a list, those of its first row."""
    names: list[str] = []
    for item in card.inputs:
        if isinstance(item, Rows):
            names += [f"{item.name}.1.{each.name}" for each in item.fields]
        else:
            names.append(item.name)
    return names


def _filled(text: str, inputs: dict[str, str], case: str) -> str:
    options = " ".join(f"--{name}" for name in SETTINGS)
    words = {  # a card's line holds one of the others
        "INPUTS": "\n".join(case.format(card=card, names=names) for card, names in inputs.items()),
        "COMMANDS": " ".join(COMMANDS),
        "CHAPTERS": " ".join(chapters()),
        "CARDS": " ".join(inputs),
        "SHELLS": " ".join(SHELLS),
        "OPTIONS": f"{options} --json --help",
        "TAKES": "|".join(f"--{name}" for name in SETTINGS),
        "STYLES": " ".join(STYLES),
        "SYSTEMS": " ".join(SYSTEMS),
    }
    for name, value in words.items():
        text = text.replace(f"@{name}@", value)
    return text


# This shell splits words at =, so a value is a word of its own: nothing is offered for one.
BASH = """\
# Completion of fibercalc. In ~/.bashrc: eval "$(fibercalc completion bash)"
_fibercalc() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
  local command=${COMP_WORDS[1]} card="" words="" at
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    COMPREPLY=($(compgen -W "@COMMANDS@ --help --version" -- "$word"))
    return
  fi
  [[ $word == = || $before == = ]] && return
  case $command:$before in
    work:--file) COMPREPLY=($(compgen -f -- "$word")); return ;;
    work:--style) COMPREPLY=($(compgen -W "@STYLES@" -- "$word")); return ;;
    work:--system) COMPREPLY=($(compgen -W "@SYSTEMS@" -- "$word")); return ;;
    work:--money) return ;;
  esac
  for ((at = 2; at < COMP_CWORD; at++)); do
    case ${COMP_WORDS[at]} in
      @TAKES@) [[ ${COMP_WORDS[at+1]} == = ]] && ((at++)); ((at++)) ;;
      -*) ;;
      *) card=${COMP_WORDS[at]}; break ;;
    esac
  done
  case $command:$card in
    cards:) words="@CHAPTERS@ --json --help" ;;
    show:) words="@CARDS@ --json --help" ;;
    completion:) words="@SHELLS@ --help" ;;
    work:) words="@CARDS@ @OPTIONS@" ;;
@INPUTS@
    cards:*|show:*) words="--json --help" ;;
  esac
  COMPREPLY=($(compgen -W "$words" -- "$word"))
  [[ ${COMPREPLY[0]} == *= ]] && compopt -o nospace 2>/dev/null
  return 0
}
complete -F _fibercalc fibercalc
"""


def _bash(inputs: dict[str, str]) -> str:
    return _filled(BASH, inputs, '    work:{card}) words="{names} @OPTIONS@" ;;')


ZSH = """\
#compdef fibercalc
# Completion of fibercalc. In ~/.zshrc, after compinit: eval "$(fibercalc completion zsh)"
_fibercalc() {
  local command=$words[2] before=$words[CURRENT-1] card="" at
  local -a names others
  if ((CURRENT == 2)); then
    compadd -- @COMMANDS@ --help --version
    return
  fi
  case $command:$before in
    work:--file) _files; return ;;
    work:--style) compadd -- @STYLES@; return ;;
    work:--system) compadd -- @SYSTEMS@; return ;;
    work:--money) return ;;
  esac
  for ((at = 3; at < CURRENT; at++)); do
    case $words[at] in
      @TAKES@) ((at++)) ;;
      -*) ;;
      *) card=$words[at]; break ;;
    esac
  done
  case $command:$card in
    cards:) others=(@CHAPTERS@ --json --help) ;;
    show:) others=(@CARDS@ --json --help) ;;
    completion:) others=(@SHELLS@ --help) ;;
    work:) others=(@CARDS@ @OPTIONS@) ;;
@INPUTS@
    cards:*|show:*) others=(--json --help) ;;
  esac
  compadd -S '' -- $names
  compadd -- $others
}
compdef _fibercalc fibercalc
"""


def _zsh(inputs: dict[str, str]) -> str:
    return _filled(ZSH, inputs, "    work:{card}) names=({names}) others=(@OPTIONS@) ;;")


FISH = """\
# Completion of fibercalc. In ~/.config/fish/config.fish: fibercalc completion fish | source
function __fibercalc_at --description 'the command is this one, and its card this one or not there'
  set -l words (commandline -opc)
  test "$words[2]" = $argv[1]; or return 1
  set -l at 3
  while test $at -le (count $words)
    switch $words[$at]
      case @TAKES@
        set at (math $at + 1)
      case '-*'
      case '*'
        test "$words[$at]" = "$argv[2]"
        return
    end
    set at (math $at + 1)
  end
  test -z "$argv[2]"
end
complete -c fibercalc -f
complete -c fibercalc -l help -d 'what can be said'
complete -c fibercalc -n __fish_use_subcommand -l version
@COMMANDS@
complete -c fibercalc -n '__fibercalc_at cards' -a '@CHAPTERS@'
complete -c fibercalc -n '__fibercalc_at show' -a '@CARDS@'
complete -c fibercalc -n '__fibercalc_at completion' -a '@SHELLS@'
complete -c fibercalc -n '__fibercalc_at work' -a '@CARDS@'
complete -c fibercalc -n '__fish_seen_subcommand_from cards show work' -l json -d 'the same as data'
@SETTINGS@
@INPUTS@
"""
FISH_TAKES = {"file": "-rF", "style": f"-xa '{' '.join(STYLES)}'"}
FISH_TAKES |= {"system": f"-xa '{' '.join(SYSTEMS)}'", "money": "-x"}


def _fish(inputs: dict[str, str]) -> str:
    commands = [
        f"complete -c fibercalc -n __fish_use_subcommand -a {name} -d '{words}'"
        for name, words in COMMANDS.items()
    ]
    settings = [
        f"complete -c fibercalc -n '__fish_seen_subcommand_from work' -l {name}"
        f" {FISH_TAKES[name]} -d '{words}'"
        for name, words in SETTINGS.items()
    ]
    text = FISH.replace("@COMMANDS@", "\n".join(commands))
    text = text.replace("@SETTINGS@", "\n".join(settings))
    text = text.replace("@TAKES@", " ".join(f"--{name}" for name in SETTINGS))
    return _filled(
        text, inputs, "complete -c fibercalc -n '__fibercalc_at work {card}' -a '{names}'"
    )
