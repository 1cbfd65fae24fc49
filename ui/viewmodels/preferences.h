// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <functional>

namespace wetfront::ui {

/// What the reader chose for himself; kept outside the record file. Functions that are not there keep
/// nothing.
struct Preferences {
    std::function<QString(const QString& key)> read;  ///< empty: never chosen
    std::function<void(const QString& key, const QString& value)> write;
    /// From now on the program speaks the language of that code (language.h), or that of the system where it
    /// is empty; returns the code of what it speaks. None: English.
    std::function<QString(const QString& chosen)> speak = {};

    [[nodiscard]] QString kept(const QString& key) const { return read ? read(key) : QString{}; }
    void keep(const QString& key, const QString& value) const {
        if (write) {
            write(key, value);
        }
    }
};

}  // namespace wetfront::ui
