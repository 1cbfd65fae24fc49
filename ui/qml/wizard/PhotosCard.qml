// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The visit's photos, each with a note, and the way to add one.
Card {
    id: card

    required property PhotosViewModel photos
    property bool readOnly: false
    property string problem

    title: qsTr("Photos")
    visible: !readOnly || photos.photos.length > 0

    Repeater {
        model: card.photos.photos
        delegate: RowLayout {
            id: photo
            required property var modelData
            required property int index
            spacing: Theme.space
            Layout.fillWidth: true
            Image {
                source: "image://photo/" + photo.modelData["picture"]
                cache: false
                fillMode: Image.PreserveAspectFit
                sourceSize.width: Theme.photoSide
                Accessible.role: Accessible.Graphic
                Accessible.name: photo.modelData["title"]
                Layout.preferredWidth: Theme.photoSide
                Layout.preferredHeight: Theme.photoSide
                Layout.alignment: Qt.AlignTop
            }
            ColumnLayout {
                spacing: Theme.gap
                Layout.fillWidth: true
                PlainWords {
                    text: photo.modelData["title"]
                    font.bold: true
                    Layout.fillWidth: true
                }
                TextFieldRow {
                    label: qsTr("Note to photo %1").arg(photo.index + 1)
                    text: photo.modelData["note"]
                    enabled: !card.readOnly
                    onEdited: text => card.problem = card.photos.setNote(photo.index, text)
                    Layout.fillWidth: true
                }
                ActionButton {
                    visible: !card.readOnly
                    text: qsTr("Take photo %1 out").arg(photo.index + 1)
                    onClicked: card.problem = card.photos.remove(photo.index)
                }
            }
        }
    }
    PlainWords {
        visible: card.photos.photos.length === 0
        text: qsTr("A photo of a pad's face, an outlet or a setting says in the office what words do not. Take it with the tablet's camera, then add it here.")
        Layout.fillWidth: true
    }
    ErrorLine {
        text: card.problem
        Layout.fillWidth: true
    }
    ActionButton {
        visible: !card.readOnly
        enabled: !card.photos.full
        text: card.photos.full ? qsTr("No more photos fit into this visit") : qsTr("Add a photo")
        pictogram: "camera"
        onClicked: chooser.ask()
    }
    Loader {
        id: chooser
        function ask(): void {
            setSource("qrc:/qt/qml/Wetfront/Wizard/PhotoChooser.qml", {
                photos: card.photos
            });
        }
    }
}
