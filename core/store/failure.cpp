// SPDX-License-Identifier: Apache-2.0
#include "store/failure.h"

#include <sqlite3.h>

#include <cerrno>
#include <cstring>

namespace wetfront::store_detail {

namespace {

Error disk_failed(const std::string& item) {
    return storage_error(item, "the disk could not be read or written",
                         "what was saved before is kept; check the disk, then try again or save elsewhere");
}

}  // namespace

Error failure(const std::string& item, const SQLite::Exception& cause) {
    // The primary result code is the low byte of an extended one.
    switch (cause.getErrorCode() & 0xFF) {
        case SQLITE_FULL:
            return storage_error(item, "the disk is full",
                                 "what was saved before is intact; make room on the disk, then try again");
        case SQLITE_IOERR:
            return disk_failed(item);
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return storage_error(item, "it cannot be written to",
                                 "what was saved before is intact; check the medium and its permissions");
        case SQLITE_CANTOPEN:
            return storage_error(item, "it cannot be opened",
                                 "check that folder and file are there and permitted");
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return storage_error(item, "another program is using it", "close that program, then try again");
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB:
            return storage_error(
                item, "the file is damaged",
                "leave it and the -wal file beside it as they are, and go back to a good copy");
        case SQLITE_NOMEM:
            return storage_error(item, "memory ran out",
                                 "what was saved before is intact; close other programs");
        default:
            return storage_error(item, cause.what(), "what was saved before is intact");
    }
}

Error system_failure(const std::string& item, int number) {
    switch (number) {
        case ENOSPC:
        case EDQUOT:
            return storage_error(item, "the disk is full",
                                 "what was saved before is intact; make room on the disk, then try again");
        case EIO:
            return disk_failed(item);
        case EROFS:
            return storage_error(
                item, "it is on a read-only medium",
                "it can be viewed read-only; to write, copy it to a disk that can be written to");
        case EACCES:
        case EPERM:
            return storage_error(item, "no permission to write there",
                                 "it can be viewed read-only; to write, start with --store and a file in a "
                                 "folder of your own");
        default:
            // Not strerror(), which speaks the machine's language.
            return storage_error(item, strerrordesc_np(number),
                                 "check that the folder is there and permitted");
    }
}

}  // namespace wetfront::store_detail
