"""Compile Python sources to bytecode, inside Pyodide's own Python: no other Python writes the
bytecode that it reads.

Runs in Node at build time (runtime.mjs). Most of a stock start is the compiling of standard-library
source, so the site ships `.pyc` files instead. The same sources always give the same bytes: fixed
dates, sorted names, a fixed hash seed.
"""

import ast
import importlib.util
import marshal
import pathlib
import zipfile

UNCHECKED_HASH = 0b01  # a hash-based .pyc whose source is never looked at
OLDEST_ZIP_DATE = (1980, 1, 1, 0, 0, 0)


def bytecode(source: bytes, filename: str, optimize: int) -> bytes:
    """The bytes of a .pyc file for one source file."""
    tree = ast.parse(source, filename)
    for each in ast.walk(tree):
        if isinstance(each, ast.ClassDef) and any(
            _names_dataclass(decorator) for decorator in each.decorator_list
        ):
            each.body.insert(
                0, ast.Assign([ast.Name("__doc__", ast.Store())], ast.Constant(each.name))
            )
    code = compile(
        ast.fix_missing_locations(tree), filename, "exec", dont_inherit=True, optimize=optimize
    )
    # Written twice: the first reading drops what marshal would otherwise note about objects that
    # this process shares.
    code = marshal.loads(marshal.dumps(code))
    flags = UNCHECKED_HASH.to_bytes(4, "little")
    return (
        importlib.util.MAGIC_NUMBER
        + flags
        + importlib.util.source_hash(source)
        + marshal.dumps(code)
    )


def _names_dataclass(decorator: ast.expr) -> bool:
    """A dataclass with no docstring writes itself one out of its signature, which takes three times
    as long as all else that makes it; so it is given one.
    """
    called = decorator.func if isinstance(decorator, ast.Call) else decorator
    return "dataclass" in (getattr(called, "id", ""), getattr(called, "attr", ""))


def compile_zip(archive: str, out: str, optimize: int, place: str) -> None:
    """Rewrite a zip with each `.py` replaced by its `.pyc`; place is the folder that tracebacks
    show.
    """
    with zipfile.ZipFile(archive) as given:
        write_compiled(
            {name: given.read(name) for name in given.namelist() if not name.endswith("/")},
            out,
            optimize,
            place,
        )


def compile_folder(folder: str, out: str, optimize: int, place: str) -> None:
    """The same for every file below a folder."""
    paths = [path for path in pathlib.Path(folder).rglob("*") if path.is_file()]
    write_compiled(
        {path.relative_to(folder).as_posix(): path.read_bytes() for path in paths},
        out,
        optimize,
        place,
    )


def write_compiled(files: dict[str, bytes], out: str, optimize: int, place: str) -> None:
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as made:
        for name in sorted(files):
            content = files[name]
            if name.endswith(".py"):
                content = bytecode(content, f"{place}/{name}", optimize)
                name += "c"
            entry = zipfile.ZipInfo(name, OLDEST_ZIP_DATE)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            made.writestr(entry, content)
