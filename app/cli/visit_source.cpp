// SPDX-License-Identifier: Apache-2.0
#include "cli/visit_source.h"

#include <cerrno>
#include <cstring>
#include <fstream>
#include <istream>

#include "batch/sheet_reader.h"
#include "records/record_text.h"
#include "store/house_visits.h"

namespace wetfront {
namespace {

// One byte more than is accepted, so that the reader sees that a file is too long and memory stays bounded.
std::string bounded_text(std::istream& stream, std::size_t most_bytes) {
    std::string text(most_bytes + 1, '\0');
    stream.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(stream.gcount()));
    return text;
}

bool is_there(const std::string& name) {
    std::error_code ignored;
    return std::filesystem::exists(name, ignored);
}

Result<LoadedVisit> from_store(const std::string& visit, const Common& common) {
    WF_TRY(const auto id, parse_id(visit, "VISIT"));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(auto file, store.visit_file(id));
    WF_TRY(const int revision, store.revision_of(id));
    WF_TRY(auto of_house, visit_files_of(store, file.house.id));
    WF_TRY(auto photos, photos_of(store, file.visit));
    return LoadedVisit{std::move(file), revision, std::move(photos), std::move(of_house)};
}

}  // namespace

Result<std::string> text_of_file(const std::string& name, std::size_t most_bytes, const char* instead) {
    std::ifstream stream{name, std::ios::binary};
    std::error_code ignored;
    if (!stream || std::filesystem::is_directory(name, ignored)) {
        const auto cause =
            std::filesystem::is_directory(name, ignored) ? "is a folder" : std::strerror(errno);
        return storage_error(name, cause, instead);
    }
    return bounded_text(stream, most_bytes);
}

Result<LoadedVisit> load_visit(const std::string& visit, const Common& common) {
    if (visit != "-" && !is_there(visit)) {
        if (common.store.empty()) {
            return storage_error(visit, "there is no such file",
                                 "name a file, - or, with --store FILE, an id");
        }
        return from_store(visit, common);
    }
    std::string text;
    if (visit == "-") {
        text = bounded_text(common.surroundings.in, most_file_bytes);
    } else {
        WF_TRY(text, text_of_file(visit, most_file_bytes, "name a visit file that can be read"));
    }
    WF_TRY(auto file, parse_visit_file(text));
    return LoadedVisit{std::move(file)};
}

Result<std::vector<Id>> ids_of(const std::vector<std::string>& texts, std::string_view item) {
    std::vector<Id> ids;
    for (const auto& text : texts) {
        WF_TRY(auto id, parse_id(text, item));
        ids.push_back(std::move(id));
    }
    return ids;
}

Result<SettingTemplate> load_template(const std::string& name) {
    WF_TRY(const auto text, text_of_file(name, most_file_bytes, "name a template file that can be read"));
    return parse_template_file(text);
}

Result<void> check_store_named(const Common& common) {
    if (common.store.empty()) {
        return bad_input("--store", "", "name the record file: --store FILE");
    }
    if (!is_there(common.store)) {
        return storage_error(common.store, "there is no such file",
                             "name a record file that was made by the program");
    }
    return boost::outcome_v2::success();
}

Result<Store> open_store(const Common& common) {
    WF_CHECK(check_store_named(common));
    return Store::open(common.store, common.surroundings.clock, OpenMode::read_only);
}

std::string headline(const VisitFile& file) {
    return file.house.name + ", " + file.farm.name + ", " + local_date(file.visit.started);
}

}  // namespace wetfront
