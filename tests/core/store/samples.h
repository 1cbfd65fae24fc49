// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <stdexcept>
#include <string>

#include "records/setting_template.h"
#include "store/store.h"
#include "support/fake_clock.h"

namespace wetfront::test {

/// The file permissions, such as 0600.
[[nodiscard]] unsigned mode_of(const std::filesystem::path& path);

/// The value, or the end of the test with the error's text.
template <class T>
[[nodiscard]] T value_of(Result<T> result) {
    if (!result) {
        throw std::runtime_error{result.error().text()};
    }
    return std::move(result).value();
}
inline void succeed(const Result<void>& result) {
    if (!result) {
        throw std::runtime_error{result.error().text()};
    }
}

/// The error's text, or a failure of the test.
template <class T>
[[nodiscard]] std::string error_of(const Result<T>& result) {
    if (result) {
        ADD_FAILURE() << "an error was expected";
        return {};
    }
    return result.error().text();
}

template <class Q>
[[nodiscard]] Entered<Q> entered(const char* text) {
    return value_of(Entered<Q>::parse(text, "sample"));
}

// Invented records.

[[nodiscard]] Farm sample_farm();
/// Two pumps; the first feeds two banks, the second one.
[[nodiscard]] House sample_house();
[[nodiscard]] Visit sample_visit(const std::string& id = "visit-1");
[[nodiscard]] Signature sample_signature();
/// Bytes that pass for a photo, and the photo of bank-1 that names them.
inline constexpr std::string_view sample_jpeg{"\xFF\xD8\xFF\xE0 not to be drawn \0\xFF\xD9", 24};
[[nodiscard]] Photo sample_photo();
/// The nth press of a run: made `second` seconds after the fake clock's start.
[[nodiscard]] Mark sample_mark(const std::string& id, MarkKind kind, std::int64_t second = 0);

/// A private folder with a record file's path in it, gone at the end of the test.
class StoreFolder {
public:
    StoreFolder();
    ~StoreFolder();
    StoreFolder(const StoreFolder&) = delete;
    StoreFolder& operator=(const StoreFolder&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::filesystem::path file() const { return path_ / "records"; }

private:
    std::filesystem::path path_;
};

class StoreTest : public ::testing::Test {
protected:
    [[nodiscard]] Store open(OpenMode mode = OpenMode::read_write) {
        return value_of(Store::open(file, clock, mode));
    }
    /// With farm, house and one open visit.
    [[nodiscard]] Store open_with_visit();

    FakeClock clock;
    StoreFolder folder;
    std::filesystem::path file = folder.file();
};

[[nodiscard]] std::string bytes_of(const std::filesystem::path& file);

/// What makes the closed file's tables, indices, views and triggers, as tests/data/store keeps it.
[[nodiscard]] std::string schema_text(const std::filesystem::path& file);

}  // namespace wetfront::test
