// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <ostream>

#include "base/whole_file.h"
#include "batch/sheet_reader.h"
#include "cli/json_output.h"
#include "cli/store_parts.h"
#include "cli/visit_source.h"
#include "records/record_text.h"
#include "store/record_hash.h"

namespace wetfront {
namespace {

struct AddOptions {
    std::string visit;
    std::string file;
    std::string bank;
    std::string finding;
    std::string note;
    bool keep_camera_data = false;
};

Result<ExitStatus> run_add(const AddOptions& options, const Common& common) {
    if (!common.surroundings.take_photo) {
        return bad_input("store photo", "", "this build reads no pictures; use one with the wizard");
    }
    WF_TRY(const auto id, parse_id(options.visit, "VISIT"));
    Photo photo;
    if (!options.bank.empty()) {
        WF_TRY(photo.bank, parse_id(options.bank, "--bank"));
    }
    photo.finding = options.finding;
    photo.note = options.note;
    photo.added = common.surroundings.clock.wall_now();
    WF_TRY(const auto jpeg, common.surroundings.take_photo(options.file, options.keep_camera_data));
    photo.sha256 = photo_hash(jpeg);

    WF_CHECK(check_store_named(common));
    WF_TRY(auto store, Store::open(common.store, common.surroundings.clock));
    WF_TRY(auto file, store.visit_file(id));
    auto& photos = file.visit.photos;
    if (std::ranges::find(photos, photo.sha256, &Photo::sha256) != photos.end()) {
        return bad_input(options.file, photo.sha256, "one that the visit does not have yet");
    }
    photos.push_back(photo);
    WF_CHECK(check_references(file));
    WF_CHECK(store.keep_picture(file.visit, jpeg));
    if (common.json) {
        print_json(common.out(), {{"visit", id.text}, {"sha256", photo.sha256}, {"bytes", jpeg.size()}});
    } else {
        common.out() << "sha256 " << photo.sha256 << '\n';
    }
    return ExitStatus::done;
}

Result<ExitStatus> run_write(const std::string& visit, const std::string& folder, const Common& common) {
    WF_TRY(const auto id, parse_id(visit, "VISIT"));
    WF_TRY(const auto store, open_store(common));
    WF_TRY(const auto file, store.visit_file(id));
    WF_TRY(const auto photos, photos_of(store, file.visit));
    JsonObject written = JsonObject::array();
    for (const auto& photo : file.visit.photos) {
        const auto bytes = photos.find(photo.sha256);
        std::string path;
        if (bytes != photos.end()) {
            path = (std::filesystem::path{folder} / (photo.sha256 + ".jpg")).string();
            WF_CHECK(write_whole(path, bytes->second));
        }
        if (common.json) {
            written.push_back({{"file", path},
                               {"sha256", photo.sha256},
                               {"bank", photo.bank.text},
                               {"finding", photo.finding},
                               {"note", photo.note},
                               {"added", to_iso8601(photo.added)}});
        } else {
            common.out() << (path.empty() ? photo.sha256 + ", not in this record file" : path)
                         << (photo.note.empty() ? "" : ": " + photo.note) << '\n';
        }
    }
    if (common.json) {
        print_json(common.out(), {{"photos", std::move(written)}});
    }
    return ExitStatus::done;
}

}  // namespace

void add_store_photos(CLI::App& store, const Common& common, Work& chosen) {
    auto* add =
        store.add_subcommand("photo", "add a photo to an open visit: scaled, without the camera's data");
    const auto options = std::make_shared<AddOptions>();
    add->add_option("visit", options->visit, "id of the visit")->required()->type_name("VISIT");
    add->add_option("picture", options->file, "a JPEG or PNG file")->required()->type_name("FILE");
    add->add_option("--bank", options->bank, "the pad bank that it shows")->type_name("ID");
    add->add_option("--finding", options->finding, "the rule whose finding it shows")->type_name("RULE");
    add->add_option("--note", options->note, "what else is to be said of it")->type_name("TEXT");
    add->add_flag("--keep-camera-data", options->keep_camera_data,
                  "keep what the camera wrote into it: place, time, owner");
    add->footer("Example: wetfront-cli store photo VISIT scale.jpg --bank bank-1 --store records.wetfront");
    add->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_add(*options, common); }; });

    auto* write = store.add_subcommand("photos", "the photos of a visit as files, named by their SHA-256");
    const auto visit = std::make_shared<std::string>();
    const auto folder = std::make_shared<std::string>();
    write->add_option("visit", *visit, "id of the visit")->required()->type_name("VISIT");
    write->add_option("--to", *folder, "the folder for them")->required()->type_name("FOLDER");
    write->footer("Example: wetfront-cli store photos VISIT --to photos --store records.wetfront");
    write->callback([&common, &chosen, visit, folder] {
        chosen = [&common, visit, folder] { return run_write(*visit, *folder, common); };
    });
}

}  // namespace wetfront
