# SPDX-License-Identifier: Apache-2.0
"""The files of the project, and the shape of a lint rule."""
import json
import os
import subprocess
from dataclasses import dataclass, field
from pathlib import Path
from typing import Callable


@dataclass(frozen=True)
class Planted:
    """A violation laid over the rule's clean tree: what it is, its files, and a piece of the one complaint it must bring."""
    what: str
    files: dict
    expected: str


@dataclass(frozen=True)
class Rule:
    name: str
    says: str
    check: Callable  # ProjectTree -> list of complaints, each "file:line: what, and what to do"
    clean: dict = field(default_factory=dict)
    planted: list = field(default_factory=list)


class ProjectTree:
    def __init__(self, root, build=None):
        self.root = Path(root).resolve()
        self.build = Path(build).resolve() if build else None
        self._files = None

    def files(self, *patterns):
        """Paths below the root, as git would take them (tracked, or new and not ignored); without git all but build/."""
        if self._files is None:
            self._files = sorted(self._from_git() or self._from_disk())
        if not patterns:
            return self._files
        return [name for name in self._files if any(Path(name).match(pattern) for pattern in patterns)]

    def under(self, folder, *patterns):
        return [name for name in self.files(*patterns) if name.startswith(folder + "/")]

    def text(self, name):
        return Path(self.root, name).read_text(encoding="utf-8", errors="replace")

    def lines(self, name):
        return list(enumerate(self.text(name).splitlines(), start=1))

    def ctest(self):
        """The tests CTest knows, as its JSON listing has them."""
        stored = Path(self.build, "ctest.json")
        if stored.exists():  # a planted tree brings its listing along
            return json.loads(stored.read_text(encoding="utf-8"))["tests"]
        listing = subprocess.run(["ctest", "--test-dir", str(self.build), "--show-only=json-v1"],
                                 check=True, capture_output=True, text=True)
        return json.loads(listing.stdout)["tests"]

    def _from_git(self):
        if not Path(self.root, ".git").exists():
            return []
        try:
            listing = subprocess.run(
                ["git", "-c", "safe.directory=*", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
                cwd=self.root, check=True, capture_output=True)
        except (OSError, subprocess.CalledProcessError):
            return []
        names = listing.stdout.decode("utf-8").split("\0")
        return [name for name in names if name and Path(self.root, name).is_file()]

    def _from_disk(self):
        found = []
        for folder, folders, names in os.walk(self.root):
            folders[:] = [name for name in folders
                          if name not in (".git", "__pycache__") and Path(folder, name) != Path(self.root, "build")]
            found += [Path(folder, name).relative_to(self.root).as_posix() for name in names]
        return found
