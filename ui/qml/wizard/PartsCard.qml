// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Several things of one sort, each with a form and, folded, a second one; can be added to and taken from.
ColumnLayout {
    id: parts

    required property PartsModel model
    required property NumberPad pad
    required property string addText
    required property string removeText
    required property bool readOnly
    property string moreTitle
    // The parts are headers with outlets, and each has its picture.
    property bool pictured: false
    property string problem

    spacing: Theme.space

    Repeater {
        model: parts.model
        delegate: ColumnLayout {
            id: part
            required property int index
            required property string title
            required property FormModel form
            required property FormModel more
            required property var results
            required property var picture
            required property string news
            spacing: 0
            Layout.fillWidth: true
            FormCard {
                title: part.title
                form: part.form
                pad: parts.pad
                readOnly: parts.readOnly
                Layout.fillWidth: true
                Repeater {
                    model: part.more && part.more.count > 0 ? 1 : 0
                    delegate: FoldedForm {
                        title: parts.moreTitle
                        form: part.more
                        pad: parts.pad
                        readOnly: parts.readOnly
                        results: parts.pictured ? [] : part.results
                        Layout.fillWidth: true
                    }
                }
                Repeater {
                    model: parts.pictured ? 1 : 0
                    delegate: HeaderFold {
                        bank: part.title
                        picture: part.picture
                        words: part.results
                        Layout.fillWidth: true
                    }
                }
                PlainWords {
                    visible: part.news.length > 0
                    text: part.news
                    color: Theme.warningInk
                    Layout.fillWidth: true
                }
                ActionButton {
                    visible: part.news.length > 0 && !parts.readOnly
                    text: qsTr("Take over the change: %1").arg(part.title)
                    pictogram: "down"
                    onClicked: parts.problem = parts.model.takeOver(part.index)
                }
                ActionButton {
                    visible: parts.model.count > 1 && !parts.readOnly
                    text: parts.removeText.arg(part.title)
                    pictogram: "bin"
                    onClicked: parts.problem = parts.model.remove(part.index)
                }
            }
        }
    }
    ErrorLine {
        text: parts.problem
        Layout.fillWidth: true
    }
    ActionButton {
        visible: !parts.readOnly
        text: parts.addText
        pictogram: "plus"
        onClicked: parts.problem = parts.model.add()
    }
}
